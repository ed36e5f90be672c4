using System.Buffers.Binary;
using Lidoff.Numbers.Failing;
using Microsoft.Data.Sqlite;

namespace Lidoff.Evidence.Store;

/// <summary>Tables of the embedded database and the marks that tell ours from another's and an older one from a newer.</summary>
internal static class SqliteSchema
{
    /// <summary>The database format this program writes, in the file's user version.</summary>
    public const int Version = 1;

    /// <summary>"Lido" in ASCII, in the file's application id.</summary>
    public const int ApplicationId = 0x4C69646F;

    // Where the two stand in the file's first page: https://www.sqlite.org/fileformat.html#the_database_header
    private const int HeaderBytes = 100;
    private const int VersionOffset = 60;
    private const int ApplicationOffset = 68;

    private const string Tables = """
        CREATE TABLE entries (
          arrival INTEGER PRIMARY KEY,
          id TEXT NOT NULL UNIQUE,
          dossier TEXT NOT NULL,
          chain TEXT NOT NULL,
          seq INTEGER NOT NULL,
          bytes BLOB NOT NULL,
          UNIQUE (chain, seq)) STRICT;
        CREATE INDEX entries_of_dossier ON entries (dossier, arrival);
        CREATE TABLE payloads (id TEXT PRIMARY KEY, bytes BLOB NOT NULL) STRICT;
        CREATE TABLE erased (id TEXT PRIMARY KEY) STRICT, WITHOUT ROWID;
        CREATE TABLE heads (dossier TEXT NOT NULL, id TEXT NOT NULL, PRIMARY KEY (dossier, id)) STRICT, WITHOUT ROWID;
        CREATE TABLE entry_files (hash TEXT NOT NULL, id TEXT NOT NULL, PRIMARY KEY (hash, id)) STRICT, WITHOUT ROWID;
        CREATE TABLE snapshots (dossier TEXT PRIMARY KEY, key TEXT NOT NULL, bytes BLOB NOT NULL) STRICT, WITHOUT ROWID;
        """;

    /// <summary>
    /// Looks at the file's first bytes, before the database library may touch it: a newer or foreign file is refused. Null
    /// when the file is ours, or is not there, or is empty.
    /// </summary>
    public static Fault? Refusal(string path)
    {
        if (!File.Exists(path)) return null;
        Span<byte> header = stackalloc byte[HeaderBytes];
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var read = file.ReadAtLeast(header, HeaderBytes, throwOnEndOfStream: false);
        if (read == 0) return null;
        if (read < HeaderBytes || !header.StartsWith("SQLite format 3\0"u8)) return StoreSentences.NotOurs(path);
        return Refusal(path, BinaryPrimitives.ReadInt32BigEndian(header[ApplicationOffset..]), BinaryPrimitives.ReadInt32BigEndian(header[VersionOffset..]));
    }

    /// <summary>Settles the connection's pragmas and makes the tables where the file is new. A fault leaves the file as it was.</summary>
    public static Fault? Prepare(SqliteConnection connection, string path)
    {
        Run(connection, "PRAGMA busy_timeout=30000");
        if (ForeignTables(connection)) return StoreSentences.NotOurs(path);
        // Full: an acknowledged commit has reached the disk, not only the system's cache.
        // Secure delete: an erased payload's bytes are overwritten, not only unlinked.
        Run(connection, "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA secure_delete=ON; PRAGMA foreign_keys=OFF;");
        using var transaction = connection.BeginTransaction(deferred: false);
        var application = Number(connection, transaction, "PRAGMA application_id");
        var version = Number(connection, transaction, "PRAGMA user_version");
        var tables = Number(connection, transaction, "SELECT count(*) FROM sqlite_schema");
        if (tables == 0 && version == 0)
        {
            Run(connection, Tables + $"PRAGMA application_id={ApplicationId}; PRAGMA user_version={Version};", transaction);
            transaction.Commit();
            // So that the marks stand in the main file, where the next opener looks before anything else.
            Run(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
            return null;
        }

        return Refusal(path, application, version);
    }

    /// <summary>
    /// True when the file has tables and neither mark: most programs set none, so nothing but the tables tells that it is not ours.
    /// Asked before the first pragma that writes, and in one transaction, since another process of ours may be making it now.
    /// </summary>
    private static bool ForeignTables(SqliteConnection connection)
    {
        using var look = connection.BeginTransaction(deferred: true);
        return Number(connection, look, "SELECT count(*) FROM sqlite_schema") > 0
            && Number(connection, look, "PRAGMA application_id") == 0 && Number(connection, look, "PRAGMA user_version") == 0;
    }

    public static void Run(SqliteConnection connection, string sql, SqliteTransaction? transaction = null)
    {
        using var command = connection.CreateCommand();
        command.Transaction = transaction;
#pragma warning disable CA2100 // Only constants of this folder come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    private static long Number(SqliteConnection connection, SqliteTransaction transaction, string sql)
    {
        using var command = connection.CreateCommand();
        command.Transaction = transaction;
#pragma warning disable CA2100 // Only constants of this file come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        return (long)command.ExecuteScalar()!;
    }

    private static Fault? Refusal(string path, long application, long version) => (application, version) switch
    {
        (ApplicationId, <= Version) => null,
        (ApplicationId, _) => StoreSentences.Newer(path, version, Version),
        (0, 0) => null,
        _ => StoreSentences.NotOurs(path),
    };
}
