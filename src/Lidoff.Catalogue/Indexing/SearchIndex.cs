using Lidoff.Catalogue.Parts;
using Lidoff.Catalogue.Searching;
using Microsoft.Data.Sqlite;

namespace Lidoff.Catalogue.Indexing;

/// <summary>
/// Full text over names, order codes, marks, makers and class words, in trigrams, in one SQLite file. It only proposes: it may
/// name a part too many, never one too few, and the caller checks each. Rows are numbered as the catalogue's parts are.
/// </summary>
internal sealed class SearchIndex : IDisposable
{
    /// <summary>Shorter words have no trigram.</summary>
    public const int ShortestWord = 3;

    private readonly Lock turn = new();
    private readonly SqliteConnection connection;

    private SearchIndex(SqliteConnection connection) => this.connection = connection;

    /// <summary>Opens the index at a path, building it first where it is absent or broken; null when the folder cannot be written.</summary>
    public static SearchIndex? Open(string path, IReadOnlyList<Part> parts)
    {
        if (TryOpen(path, parts.Count) is { } there) return there;
        return CacheFile.Put(path, temporary => Build(temporary, parts)) ? TryOpen(path, parts.Count) : null;
    }

    /// <summary>Numbers of the parts that hold all words; every word has at least <see cref="ShortestWord"/> signs.</summary>
    public IReadOnlyList<int> Holding(IReadOnlyList<string> words) =>
        Ask(string.Join(" AND ", words.Select(w => $"(names:{Quoted(w)} OR words:{Quoted(w)})")));

    /// <summary>Numbers of the parts with a name that holds all stretches when look-alikes count as one.</summary>
    public IReadOnlyList<int> HoldingAlike(IReadOnlyList<string> stretches) => Ask(string.Join(" AND ", stretches.Select(s => "alike:" + Quoted(s))));

    /// <summary>Numbers of the parts with a name that holds any of the stretches when look-alikes count as one.</summary>
    public IReadOnlyList<int> HoldingAnyAlike(IReadOnlyList<string> stretches) => Ask(string.Join(" OR ", stretches.Select(s => "alike:" + Quoted(s))));

    /// <inheritdoc/>
    public void Dispose() => connection.Dispose();

    private List<int> Ask(string match)
    {
        lock (turn)
        {
            using var command = connection.CreateCommand();
            command.CommandText = "SELECT rowid FROM entry WHERE entry MATCH $match ORDER BY rowid";
            command.Parameters.AddWithValue("$match", match);
            using var reader = command.ExecuteReader();
            var found = new List<int>();
            while (reader.Read()) found.Add(reader.GetInt32(0));
            return found;
        }
    }

    private static SearchIndex? TryOpen(string path, int parts)
    {
        if (!File.Exists(path)) return null;
        var connection = new SqliteConnection(Source(path, SqliteOpenMode.ReadOnly));
        try
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "SELECT parts FROM built";
            if (command.ExecuteScalar() is long count && count == parts) return new SearchIndex(connection);
        }
        catch (SqliteException)
        {
            // A broken cache is built anew.
        }

        connection.Dispose();
        return null;
    }

    private static void Build(string path, IReadOnlyList<Part> parts)
    {
        using var connection = new SqliteConnection(Source(path, SqliteOpenMode.ReadWriteCreate));
        connection.Open();
        // No journal: the file counts only once it is renamed into place.
        Run(connection, "PRAGMA journal_mode=OFF; PRAGMA synchronous=OFF; CREATE TABLE built(parts INTEGER NOT NULL)");
        Run(connection, "CREATE VIRTUAL TABLE entry USING fts5(names, words, alike, content='', tokenize='trigram case_sensitive 1')");
        using var transaction = connection.BeginTransaction();
        using var insert = connection.CreateCommand();
        insert.Transaction = transaction;
        insert.CommandText = "INSERT INTO entry(rowid, names, words, alike) VALUES($id, $names, $words, $alike)";
        var id = insert.Parameters.Add("$id", SqliteType.Integer);
        var names = insert.Parameters.Add("$names", SqliteType.Text);
        var words = insert.Parameters.Add("$words", SqliteType.Text);
        var alike = insert.Parameters.Add("$alike", SqliteType.Text);
        for (var i = 0; i < parts.Count; i++)
        {
            var document = SearchDocument.Of(parts[i]);
            id.Value = i;
            names.Value = string.Join('\n', document.Names);
            words.Value = string.Join('\n', document.Words);
            alike.Value = string.Join('\n', document.AlikeNames);
            insert.ExecuteNonQuery();
        }

        using (var built = connection.CreateCommand())
        {
            built.Transaction = transaction;
            built.CommandText = "INSERT INTO built(parts) VALUES($parts)";
            built.Parameters.AddWithValue("$parts", parts.Count);
            built.ExecuteNonQuery();
        }

        transaction.Commit();
        Run(connection, "INSERT INTO entry(entry) VALUES('optimize')");
    }

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private static string Source(string path, SqliteOpenMode mode) => new SqliteConnectionStringBuilder { DataSource = path, Mode = mode, Pooling = false }.ToString();

    private static string Quoted(string word) => '"' + word.Replace("\"", "\"\"", StringComparison.Ordinal) + '"';
}
