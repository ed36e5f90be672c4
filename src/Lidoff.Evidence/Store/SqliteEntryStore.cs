using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Microsoft.Data.Sqlite;

namespace Lidoff.Evidence.Store;

/// <summary>
/// The journal in one SQLite file beside its write-ahead log. Several processes may have it open; whoever writes waits for
/// the others, 30 seconds at most. Acknowledged means committed with a full sync.
/// </summary>
public sealed class SqliteEntryStore : IEntryStore
{
    // https://www.sqlite.org/rescode.html
    private const int Busy = 5, Locked = 6, ReadOnly = 8, Corrupt = 11, Full = 13, CannotOpen = 14, NoDatabase = 26;

    private readonly Lock gate = new();
    private readonly SqliteConnection connection;
    private readonly string path;
    private readonly WriterSeed writer;
    private readonly TimeProvider clock;

    private SqliteEntryStore(SqliteConnection connection, string path, WriterSeed writer, TimeProvider clock)
    {
        this.connection = connection;
        this.path = path;
        this.writer = writer;
        this.clock = clock;
    }

    /// <summary>
    /// Opens the file, making it when it is not there. A file of a newer program, or one that is no journal, is refused
    /// before anything is touched.
    /// </summary>
    public static Outcome<SqliteEntryStore> Open(string path, WriterSeed writer, TimeProvider clock)
    {
        SqliteConnection? connection = null;
        try
        {
            if (SqliteSchema.Refusal(path) is { } refusal) return refusal;
            // Not pooled: closing must give the file back at once, so that a closed workspace can be copied.
            connection = new(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false, DefaultTimeout = 30 }.ToString());
            connection.Open();
            if (SqliteSchema.Prepare(connection, path) is { } fault)
            {
                connection.Dispose();
                return fault;
            }

            return new SqliteEntryStore(connection, path, writer, clock);
        }
        catch (Exception trouble) when (trouble is SqliteException or IOException or UnauthorizedAccessException)
        {
            connection?.Dispose();
            return Sentence(trouble, path);
        }
    }

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<StoredEntry>> Append(IReadOnlyList<EntryDraft> batch, Func<Fault?>? lastCheck = null)
    {
        var outcome = Change(tables => lastCheck?.Invoke() is { } fault ? fault : JournalWork.Append(tables, writer, clock.GetUtcNow(), batch));
        if (outcome.Ok && outcome.Value.Any(e => e.Entry.Kind == Folding.ControlKinds.Erase)) ForgetLog();
        return outcome;
    }

    /// <inheritdoc/>
    public Outcome<MergeSummary> Merge(IReadOnlyList<StoredEntry> incoming, ErasureRule erasures)
    {
        var outcome = Change(tables => JournalWork.Merge(tables, incoming, erasures));
        if (outcome.Ok && outcome.Value.Erased > 0) ForgetLog();
        return outcome;
    }

    /// <inheritdoc/>
    public Outcome<JournalSlice> Read(string? dossier = null, long after = 0) => Try<JournalSlice>(() =>
    {
        const string sql = """
            SELECT e.arrival, e.id, e.bytes, p.bytes FROM entries e LEFT JOIN payloads p ON p.id = e.id
            WHERE e.arrival > $after AND ($dossier IS NULL OR e.dossier = $dossier) ORDER BY e.arrival
            """;
        using var command = Command(sql, ("$after", after), ("$dossier", dossier));
        using var reader = command.ExecuteReader();
        var entries = new List<StoredEntry>();
        var damaged = new List<Fault>();
        while (reader.Read())
        {
            after = reader.GetInt64(0);
            var id = reader.GetString(1);
            var bytes = reader.GetFieldValue<byte[]>(2);
            var payload = reader.IsDBNull(3) ? null : reader.GetFieldValue<byte[]>(3);
            if (!EntryCodec.Read(bytes).TryValue(out var entry) || entry.Id.Hex != id)
            {
                damaged.Add(StoreSentences.EntryDamaged(id));
                continue;
            }

            if (payload is not null && !EntryCodec.Belongs(entry, payload))
            {
                damaged.Add(StoreSentences.PayloadDamaged(id));
                payload = null;
            }

            entries.Add(new(entry, bytes, payload is null ? null : (ReadOnlyMemory<byte>?)payload));
        }

        return new JournalSlice(entries, after, damaged);
    });

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<EntryId>> Heads(string dossier) =>
        Texts("SELECT id FROM heads WHERE dossier=$dossier ORDER BY id", id => new EntryId(id), ("$dossier", dossier));

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<string>> Dossiers() => Texts("SELECT DISTINCT dossier FROM entries ORDER BY dossier", name => name);

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<EntryId>> Find(string dossier, string prefix) => Texts(
        "SELECT id FROM entries WHERE id >= $from AND id < $to AND dossier=$dossier ORDER BY id LIMIT 2",
        id => new EntryId(id),
        ("$dossier", dossier),
        ("$from", prefix),
        ("$to", prefix + "g"));

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<string>> FilesLeftByErasing() => Texts(
        "SELECT hash FROM entry_files GROUP BY hash HAVING sum(id NOT IN (SELECT id FROM erased)) = 0 ORDER BY hash", hash => hash);

    /// <inheritdoc/>
    public Outcome<T> Alone<T>(Func<Outcome<T>> work) => Change(_ => work());

    /// <inheritdoc/>
    public byte[]? Cached(string dossier, string key)
    {
        var found = Try<byte[]>(() =>
        {
            using var command = Command("SELECT bytes FROM snapshots WHERE dossier=$dossier AND key=$key", ("$dossier", dossier), ("$key", key));
            return command.ExecuteScalar() as byte[] ?? [];
        });
        return found.Ok && found.Value.Length > 0 ? found.Value : null;
    }

    /// <inheritdoc/>
    public void Cache(string dossier, string key, ReadOnlySpan<byte> bytes)
    {
        var kept = bytes.ToArray();
        Try<bool>(() =>
        {
            using var command = Command(
                "INSERT INTO snapshots (dossier, key, bytes) VALUES ($dossier, $key, $bytes) ON CONFLICT (dossier) DO UPDATE SET key=excluded.key, bytes=excluded.bytes",
                ("$dossier", dossier),
                ("$key", key),
                ("$bytes", kept));
            return command.ExecuteNonQuery() == 1;
        });
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (gate) connection.Dispose();
    }

    /// <summary>Lets a test make the database run out of room.</summary>
    internal void LimitPages(int pages)
    {
        lock (gate) SqliteSchema.Run(connection, FormattableString.Invariant($"PRAGMA max_page_count={pages}"));
    }

    private Outcome<T> Change<T>(Func<SqliteTables, Outcome<T>> work) => Try(() =>
    {
        using var transaction = connection.BeginTransaction(deferred: false);
        using var tables = new SqliteTables(connection, transaction);
        var outcome = work(tables);
        if (outcome.Ok) transaction.Commit();
        return outcome;
    });

    /// <summary>The write-ahead log still holds what was erased; it is written back and emptied, or at the next close where somebody reads just now.</summary>
    private void ForgetLog() => Try<bool>(() =>
    {
        SqliteSchema.Run(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
        return true;
    });

    private Outcome<IReadOnlyList<T>> Texts<T>(string sql, Func<string, T> make, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        var given = values.ToArray();
        return Try<IReadOnlyList<T>>(() =>
        {
            using var command = Command(sql, given);
            using var reader = command.ExecuteReader();
            var found = new List<T>();
            while (reader.Read()) found.Add(make(reader.GetString(0)));
            return found;
        });
    }

    private SqliteCommand Command(string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        var command = connection.CreateCommand();
#pragma warning disable CA2100 // Only constants of this file come here.
        command.CommandText = sql;
#pragma warning restore CA2100
        foreach (var (name, value) in values) command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        return command;
    }

    private Outcome<T> Try<T>(Func<Outcome<T>> work)
    {
        lock (gate)
        {
            try
            {
                return work();
            }
            catch (SqliteException trouble)
            {
                return Sentence(trouble, path);
            }
        }
    }

    private static Fault Sentence(Exception trouble, string path) => trouble switch
    {
        SqliteException { SqliteErrorCode: Full } => StoreSentences.Full(path),
        SqliteException { SqliteErrorCode: Busy or Locked } => StoreSentences.Busy(path),
        SqliteException { SqliteErrorCode: ReadOnly or CannotOpen } or UnauthorizedAccessException => StoreSentences.ReadOnly(path),
        SqliteException { SqliteErrorCode: Corrupt } => StoreSentences.Damaged(path),
        SqliteException { SqliteErrorCode: NoDatabase } => StoreSentences.NotOurs(path),
        _ => StoreSentences.Trouble(path, trouble.Message),
    };
}
