using Lidoff.Evidence.Entries;
using Microsoft.Data.Sqlite;

namespace Lidoff.Evidence.Store;

/// <summary>The journal's tables inside one transaction of the embedded database. Commands are prepared once and used for the whole batch.</summary>
internal sealed class SqliteTables(SqliteConnection connection, SqliteTransaction transaction) : IJournalTables, IDisposable
{
    private readonly Dictionary<string, SqliteCommand> commands = new(StringComparer.Ordinal);

    public Entry? Find(EntryId id) =>
        Scalar("SELECT bytes FROM entries WHERE id=$a", id.Hex) is byte[] bytes && EntryCodec.Read(bytes).TryValue(out var entry) ? entry : null;

    public EntryId? At(string chain, long seq) =>
        Scalar("SELECT id FROM entries WHERE chain=$a AND seq=$b", chain, seq) is string id ? new EntryId(id) : null;

    public (long Seq, EntryId Id)? Last(string chain)
    {
        using var reader = Command("SELECT seq, id FROM entries WHERE chain=$a ORDER BY seq DESC LIMIT 1", chain).ExecuteReader();
        return reader.Read() ? (reader.GetInt64(0), new EntryId(reader.GetString(1))) : null;
    }

    public IReadOnlyList<EntryId> Heads(string dossier)
    {
        var heads = new List<EntryId>();
        using var reader = Command("SELECT id FROM heads WHERE dossier=$a ORDER BY id", dossier).ExecuteReader();
        while (reader.Read()) heads.Add(new(reader.GetString(0)));
        return heads;
    }

    public void Insert(StoredEntry entry)
    {
        var id = entry.Id.Hex;
        Run("INSERT INTO entries (id, dossier, chain, seq, bytes) VALUES ($a, $b, $c, $d, $e)", id, entry.Entry.Dossier, entry.Entry.Chain, entry.Entry.Seq, entry.Bytes.ToArray());
        if (entry.Payload is { } payload) Run("INSERT INTO payloads (id, bytes) VALUES ($a, $b)", id, payload.ToArray());
        foreach (var file in entry.Entry.Files) Run("INSERT OR IGNORE INTO entry_files (hash, id) VALUES ($a, $b)", file, id);
    }

    public void AddHead(string dossier, EntryId id) => Run("INSERT OR IGNORE INTO heads (dossier, id) VALUES ($a, $b)", dossier, id.Hex);

    public void RemoveHead(string dossier, EntryId id) => Run("DELETE FROM heads WHERE dossier=$a AND id=$b", dossier, id.Hex);

    public bool IsErased(EntryId id) => Scalar("SELECT 1 FROM erased WHERE id=$a", id.Hex) is not null;

    public bool Erase(EntryId id)
    {
        Run("INSERT OR IGNORE INTO erased (id) VALUES ($a)", id.Hex);
        return Run("DELETE FROM payloads WHERE id=$a", id.Hex) > 0;
    }

    public void Dispose()
    {
        foreach (var command in commands.Values) command.Dispose();
    }

    private int Run(string sql, params object[] values) => Command(sql, values).ExecuteNonQuery();

    private object? Scalar(string sql, params object[] values) => Command(sql, values).ExecuteScalar();

    private SqliteCommand Command(string sql, params object[] values)
    {
        if (!commands.TryGetValue(sql, out var command))
        {
            command = connection.CreateCommand();
            command.Transaction = transaction;
#pragma warning disable CA2100 // Only constants of this file come here.
            command.CommandText = sql;
#pragma warning restore CA2100
            for (var i = 0; i < values.Length; i++) command.Parameters.Add(new SqliteParameter("$" + (char)('a' + i), values[i]));
            command.Prepare();
            commands.Add(sql, command);
            return command;
        }

        for (var i = 0; i < values.Length; i++) command.Parameters[i].Value = values[i];
        return command;
    }
}
