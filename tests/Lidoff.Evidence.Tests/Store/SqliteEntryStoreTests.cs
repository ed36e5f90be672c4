using System.Buffers.Binary;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Tests.Folding;
using Lidoff.TestSupport;
using Microsoft.Data.Sqlite;

namespace Lidoff.Evidence.Tests.Store;

public sealed class SqliteEntryStoreTests : EntryStoreContract
{
    private readonly TempFolder folder = new();
    private int made;

    protected override IEntryStore Make(string writer) => Open(folder[$"{made++}.db"], writer);

    protected override void CleanUp() => folder.Dispose();

    private static SqliteEntryStore Open(string path, string writer = "ada") => SqliteEntryStore.Open(path, Seeds.Of(writer), new SteppingClock()).Value;

    [Fact]
    public void Entries_are_there_after_closing_and_a_new_writer_goes_on_with_a_chain_of_its_own()
    {
        var path = folder["a.db"];
        using (var first = Open(path)) first.Append([WordKind.Of("a")]);
        using var second = Open(path, "ben");
        var entry = second.Append([WordKind.Of("b")]).Value[0];
        Assert.Equal(1, entry.Entry.Seq);
        Assert.Equal(second.Read().Value.Entries[0].Id, Assert.Single(entry.Entry.Heads));
    }

    [Fact]
    public void Two_open_stores_on_one_file_see_each_other()
    {
        var path = folder["a.db"];
        using var ada = Open(path);
        using var ben = Open(path, "ben");
        var first = ada.Append([WordKind.Of("a")]).Value[0];
        var second = ben.Append([WordKind.Undo(first.Id)]).Value[0];
        Assert.Equal([first.Id, second.Id], ada.Read("tag").Value.Entries.Select(e => e.Id));
    }

    [Fact]
    public void A_database_of_a_newer_program_is_refused_and_not_touched()
    {
        var path = folder["a.db"];
        Open(path).Dispose();
        var bytes = File.ReadAllBytes(path);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(60), 99);
        File.WriteAllBytes(path, bytes);
        var outcome = SqliteEntryStore.Open(path, Seeds.Of("ada"), new SteppingClock());
        Assert.Equal(
            "This workspace was written by a newer Lidoff (format 99; this one knows up to 1). Nothing was touched; open it with the newer program.",
            Assert.Single(outcome.Faults).Say);
        Assert.Equal(bytes, File.ReadAllBytes(path));
        Assert.Single(Directory.GetFiles(folder.Path, "a.db*"));
    }

    [Theory]
    [InlineData("hello, I am a text file, not a database")]
    [InlineData("x")]
    public void A_file_that_is_no_database_is_refused_and_not_touched(string content)
    {
        var path = folder["a.db"];
        File.WriteAllText(path, content);
        Assert.Equal($"{path} is not a Lidoff workspace's database. Nothing was touched.", Assert.Single(SqliteEntryStore.Open(path, Seeds.Of("ada"), new SteppingClock()).Faults).Say);
        Assert.Equal(content, File.ReadAllText(path));
    }

    [Theory]
    [InlineData("PRAGMA user_version=1; PRAGMA application_id=77")]
    [InlineData("")] // most programs set neither
    public void Another_programs_database_is_refused(string marks)
    {
        var path = folder["a.db"];
        using (var other = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            other.Open();
            using var command = other.CreateCommand();
            command.CommandText = "CREATE TABLE birds (name TEXT);" + marks;
            command.ExecuteNonQuery();
        }

        var before = File.ReadAllBytes(path);

        Assert.Equal($"{path} is not a Lidoff workspace's database. Nothing was touched.", Assert.Single(SqliteEntryStore.Open(path, Seeds.Of("ada"), new SteppingClock()).Faults).Say);
        Assert.Equal(before, File.ReadAllBytes(path));
        Assert.Equal([path], Directory.EnumerateFiles(folder.Path, "a.db*"));
    }

    [Fact]
    public void A_full_disk_stores_nothing_of_the_batch_and_says_so()
    {
        var path = folder["a.db"];
        using var store = Open(path);
        store.Append([WordKind.Of("a")]);
        store.LimitPages(20);
        var big = Enumerable.Range(0, 2000).Select(i => WordKind.Of("w" + i)).ToList();
        Assert.Equal(
            $"The disk is full: {path} could not grow. Nothing of this step was stored; what was stored before is safe. Make room and try again.",
            Assert.Single(store.Append(big).Faults).Say);
        Assert.Single(store.Read().Value.Entries);
        store.LimitPages(1_000_000);
        Assert.Equal(2000, store.Append(big).Value.Count);
        Assert.Equal(2001, store.Read().Value.Entries[^1].Entry.Seq);
    }

    [Fact]
    public void A_flipped_bit_in_a_row_is_named_and_the_rest_is_read()
    {
        var path = folder["a.db"];
        IReadOnlyList<StoredEntry> batch;
        using (var store = Open(path)) batch = store.Append([WordKind.Of("a"), WordKind.Of("b"), WordKind.Of("c")]).Value;
        using (var raw = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            raw.Open();
            using var command = raw.CreateCommand();
            command.CommandText = "UPDATE entries SET bytes = CAST(replace(CAST(bytes AS TEXT), '\"kind\":\"word\"', '\"kind\":\"ward\"') AS BLOB) WHERE seq=1; UPDATE payloads SET bytes = x'7B7D' WHERE id=(SELECT id FROM entries WHERE seq=2)";
            command.ExecuteNonQuery();
        }

        using var again = Open(path);
        var slice = again.Read("tag").Value;
        Assert.Equal([batch[1].Id, batch[2].Id], slice.Entries.Select(e => e.Id));
        Assert.Null(slice.Entries[0].Payload);
        Assert.Equal(
            [
                $"Entry {batch[0].Id.Hex[..12]} has been changed on the disk: its bytes no longer fit its name.",
                $"The content of entry {batch[1].Id.Hex[..12]} has been changed on the disk: it no longer fits its hash.",
            ],
            slice.Damaged.Select(f => f.Say));
    }

    [Fact]
    public void Erased_bytes_are_nowhere_left_in_the_files()
    {
        var path = folder["a.db"];
        const string owner = "Former-Owner-4711";
        using var store = Open(path);
        var entry = store.Append([WordKind.Of(owner)]).Value[0];
        Assert.Contains(Directory.GetFiles(folder.Path, "a.db*"), f => Holds(f, owner));
        store.Append([WordKind.Erase(entry.Id)]);
        Assert.DoesNotContain(Directory.GetFiles(folder.Path, "a.db*"), f => Holds(f, owner));
    }

    private static bool Holds(string path, string text)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes.AsSpan().IndexOf(System.Text.Encoding.UTF8.GetBytes(text)) >= 0;
    }
}
