using System.Buffers.Binary;
using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Tests.Folding;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Store;

public sealed class WorkspaceTests : IDisposable
{
    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_file_lies_under_the_hash_of_its_content_and_twice_the_same_is_one()
    {
        using var workspace = Bench.Open(folder.Path);
        // FIPS 180-2, appendix B.1: SHA-256 of "abc".
        const string abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        Assert.Equal(abc, Bench.Add(workspace, "abc", "one.txt").Value.Fact.Sha256);
        Assert.Equal(abc, Bench.Add(workspace, "abc", "two.txt").Value.Fact.Sha256);
        Assert.Equal([Path.Combine(folder.Path, "files", abc[..2], abc[2..])], Directory.GetFiles(folder["files"], "*", SearchOption.AllDirectories));
        Assert.Equal(new Verification(3, 1, 0, []) with { Faults = [] }, Bench.Verified(workspace) with { Faults = [] });
    }

    [Fact]
    public void A_damaged_file_is_healed_by_adding_it_again()
    {
        using var workspace = Bench.Open(folder.Path);
        var hash = Bench.Add(workspace, "abc").Value.Fact.Sha256;
        File.WriteAllText(workspace.Files.PathOf(hash), "abd");
        Assert.Equal("Its content is not what its hash says: it was changed after it was stored.", Assert.Single(Verifier.Run(workspace).Value.Faults).Say);
        Bench.Add(workspace, "abc");
        Bench.Verified(workspace);
    }

    [Fact]
    public void A_stored_file_can_be_read_from_any_place()
    {
        using var workspace = Bench.Open(folder.Path);
        using var stream = workspace.Files.Open(Bench.Add(workspace, "0123456789").Value.Fact.Sha256, "digits").Value;
        Assert.Equal(10, stream.Length);
        stream.Seek(7, SeekOrigin.Begin);
        Assert.Equal('7', stream.ReadByte());
    }

    [Theory]
    [InlineData("../../etc/passwd")]
    [InlineData("/etc/passwd")]
    [InlineData("..")]
    [InlineData("a\0b")]
    [InlineData("<script>alert(1)</script>.png")]
    [InlineData("\u202Egnp.exe")]
    [InlineData(" ")]
    public void Hostile_names_become_no_paths(string name)
    {
        using var workspace = Bench.Open(folder["w"]);
        var added = Bench.Add(workspace, "x", name).Value;
        Assert.Equal(string.IsNullOrWhiteSpace(name) ? "unnamed" : name, Histories.FoldOf(Histories.Entries(workspace.Store)).Live<FileAdded>()[0].Value.Name);
        Assert.Equal([folder["w"]], Directory.GetFileSystemEntries(folder.Path));
        Assert.StartsWith(folder["w"] + "/files/", workspace.Files.PathOf(added.Fact.Sha256), StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_of_ten_thousand_letters_is_cut_and_half_a_letter_replaced()
    {
        using var workspace = Bench.Open(folder.Path);
        Bench.Add(workspace, "x", new string('é', 10_000));
        Bench.Add(workspace, "y", "\uD800.png");
        var names = Histories.FoldOf(Histories.Entries(workspace.Store)).Live<FileAdded>().Select(f => f.Value.Name).ToList();
        Assert.Equal([FileKind.LongestName, 5], names.Select(n => n.Length));
        Assert.Equal("\uFFFD.png", names[1]);
    }

    [Fact]
    public void A_file_beyond_the_cap_is_refused_and_leaves_nothing()
    {
        using var workspace = Bench.Open(folder.Path);
        var outcome = workspace.Files.Take(new MemoryStream(new byte[1000]), "big.bin", cap: 999);
        Assert.Equal("\"big.bin\" is larger than the 999 bytes a file may have here; nothing of it was stored.", Assert.Single(outcome.Faults).Say);
        Assert.Empty(Directory.GetFiles(folder["files"], "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void Links_that_lead_out_of_the_workspace_are_not_followed()
    {
        using var workspace = Bench.Open(folder["w"]);
        var hash = Bench.Add(workspace, "abc").Value.Fact.Sha256;
        var outside = folder["outside"];
        Directory.CreateDirectory(outside);
        File.WriteAllText(Path.Combine(outside, hash[2..]), "secret");
        Directory.Delete(Path.GetDirectoryName(workspace.Files.PathOf(hash))!, recursive: true);
        Directory.CreateSymbolicLink(Path.GetDirectoryName(workspace.Files.PathOf(hash))!, outside);
        Assert.False(workspace.Files.Open(hash, "a.txt").Ok);
        Assert.False(Bench.Add(workspace, "abc").Ok);
        Assert.Equal("secret", File.ReadAllText(Path.Combine(outside, hash[2..])));
        Assert.Contains("Entries name this file and it is not here.", Verifier.Run(workspace).Value.Faults.Select(f => f.Say));
    }

    [Fact]
    public void A_workspace_of_a_newer_program_is_refused_and_not_touched()
    {
        Bench.Open(folder.Path).Dispose();
        var bytes = File.ReadAllBytes(folder["lidoff.db"]);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(60), 2);
        File.WriteAllBytes(folder["lidoff.db"], bytes);
        var before = Directory.GetFileSystemEntries(folder.Path, "*", SearchOption.AllDirectories);
        var outcome = Workspace.Open(folder.Path, Seeds.Of("ada"), new SteppingClock());
        Assert.Equal("This workspace was written by a newer Lidoff (format 2; this one knows up to 1). Nothing was touched; open it with the newer program.", Assert.Single(outcome.Faults).Say);
        Assert.Equal(bytes, File.ReadAllBytes(folder["lidoff.db"]));
        Assert.Equal(before, Directory.GetFileSystemEntries(folder.Path, "*", SearchOption.AllDirectories));
    }

    [Fact]
    public void A_workspace_copied_and_grown_twice_merges_both_ways_to_the_same()
    {
        EntryId shared;
        using (var origin = Bench.Open(folder["a"]))
        {
            shared = Bench.Note(origin, "shared");
            Bench.Add(origin, "shared file");
        }

        Copy(folder["a"], folder["b"]);
        using var a = Bench.Open(folder["a"]);
        using var b = Bench.Open(folder["b"]);
        Bench.Note(a, "grown in a");
        var fileOfA = Bench.Add(a, "file of a").Value.Fact.Sha256;
        b.Store.Append([WordKind.Of("better"), WordKind.Supersede(shared, 0)]);
        var fileOfB = Bench.Add(b, "file of b").Value.Fact.Sha256;

        Assert.Equal(new MergeSummary(3, 3, 0), WorkspaceMerging.Merge(a, b, ErasureRule.Refuse).Value);
        Assert.Equal(new MergeSummary(2, 6, 0), WorkspaceMerging.Merge(b, a, ErasureRule.Refuse).Value);
        Assert.Equal(Bench.View(a), Bench.View(b));
        Assert.Equal(["better", "grown in a"], Histories.FoldOf(Histories.Entries(a.Store)).Live<Word>().Select(w => w.Value.Text).Order());
        foreach (var workspace in new[] { a, b })
        {
            Assert.Equal("file of a", Bench.Read(workspace, fileOfA));
            Assert.Equal("file of b", Bench.Read(workspace, fileOfB));
            Assert.Equal(3, Bench.Verified(workspace).Files);
        }
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_merge_whose_file_is_missing_or_another_takes_nothing_in(bool missing)
    {
        using var from = Bench.Open(folder["from"]);
        using var into = Bench.Open(folder["into"]);
        var hash = Bench.Add(from, "abc").Value.Fact.Sha256;
        if (missing) File.Delete(from.Files.PathOf(hash));
        else File.WriteAllText(from.Files.PathOf(hash), "another");
        var before = Bench.View(into);
        Assert.Equal($"File {hash[..12]} is named by what comes in, but it is missing there or not what its hash says; nothing was taken in.", Assert.Single(WorkspaceMerging.Merge(into, from, ErasureRule.Refuse).Faults).Say);
        Assert.Equal(before, Bench.View(into));
        Bench.Verified(into);
    }

    [Fact]
    public void A_merge_that_erases_removes_the_file_here_too()
    {
        using var a = Bench.Open(folder["a"]);
        using var b = Bench.Open(folder["b"]);
        var added = Bench.Add(a, "former owner").Value;
        WorkspaceMerging.Merge(b, a, ErasureRule.Refuse);
        a.Store.Append([WordKind.Erase(added.Stored.Id)]);
        a.RemoveErasedFiles();
        Assert.False(WorkspaceMerging.Merge(b, a, ErasureRule.Refuse).Ok);
        Assert.True(b.Files.Has(added.Fact.Sha256));
        Assert.Equal(1, WorkspaceMerging.Merge(b, a, ErasureRule.Follow).Value.Erased);
        Assert.False(b.Files.Has(added.Fact.Sha256));
        Assert.Equal(1, Bench.Verified(b).Erased);
    }

    [Fact]
    public void Verifying_a_damaged_entry_blames_the_entry_and_never_calls_its_file_erased()
    {
        string hash, id;
        using (var workspace = Bench.Open(folder.Path))
        {
            var added = Bench.Add(workspace, "kept").Value;
            (hash, id) = (added.Fact.Sha256, added.Stored.Id.Hex);
        }

        Sql($"UPDATE payloads SET bytes = x'7b7d' WHERE id = '{id}'");
        using var again = Bench.Open(folder.Path);
        Assert.True(again.Files.Has(hash));
        Assert.Equal(id, Assert.Single(Verifier.Run(again).Value.Faults).Where);
    }

    [Fact]
    public void Verifying_notices_that_the_last_entry_of_a_chain_was_taken_out()
    {
        string id;
        using (var workspace = Bench.Open(folder.Path))
        {
            Bench.Add(workspace, "first");
            id = Bench.Add(workspace, "last").Value.Stored.Id.Hex;
        }

        Sql($"DELETE FROM entries WHERE id = '{id}'; DELETE FROM payloads WHERE id = '{id}'");
        using var again = Bench.Open(folder.Path);
        var found = Verifier.Run(again).Value;
        Assert.Contains(found.Faults, fault => fault.Where == id && fault.Say == $"Entry {id[..12]} is the newest of its chain and it is not here: it was taken out of the journal.");
    }

    [Fact]
    public void A_files_folder_that_is_a_link_is_refused_and_nothing_behind_it_is_touched()
    {
        Directory.CreateDirectory(folder["elsewhere"]);
        File.WriteAllText(folder["elsewhere/new-precious"], "mine");
        using (Bench.Open(folder["w"]))
        {
        }

        if (Directory.Exists(folder["w/files"])) Directory.Delete(folder["w/files"]);
        Directory.CreateSymbolicLink(folder["w/files"], folder["elsewhere"]);
        var opened = Workspace.Open(folder["w"], Seeds.Of("ada"), new SteppingClock());
        Assert.Equal($"{folder["w/files"]} is a link. A workspace's files lie inside it; nothing was touched.", Assert.Single(opened.Faults).Say);
        Assert.Equal("mine", File.ReadAllText(folder["elsewhere/new-precious"]));
    }

    private void Sql(string sql)
    {
        using var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={folder["lidoff.db"]};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // The test's own words.
        command.CommandText = sql;
#pragma warning restore CA2100
        command.ExecuteNonQuery();
    }

    [Fact]
    public void Verifying_names_every_kind_of_damage()
    {
        using var workspace = Bench.Open(folder.Path);
        var gone = Bench.Add(workspace, "gone").Value.Fact.Sha256;
        var changed = Bench.Add(workspace, "changed").Value.Fact.Sha256;
        var erased = Bench.Add(workspace, "erased").Value;
        workspace.Store.Append([WordKind.Erase(erased.Stored.Id)]);
        File.Delete(workspace.Files.PathOf(gone));
        File.WriteAllText(workspace.Files.PathOf(changed), "changes");
        File.WriteAllText(folder["files/stray.txt"], "stray");
        var found = Verifier.Run(workspace).Value;
        Assert.False(found.Ok);
        Assert.Equal(
            new[]
            {
                (gone, "Entries name this file and it is not here."),
                (changed, "Its content is not what its hash says: it was changed after it was stored."),
                (erased.Fact.Sha256, "Every entry that names this file was erased, and the file is still here; opening the workspace removes it."),
                ("stray.txt", "This is no file of the workspace; it was put here by something else."),
            }.OrderBy(f => f.Item1, StringComparer.Ordinal),
            found.Faults.Select(f => (f.Where, f.Say)));
    }

    [Fact]
    public async Task Two_writers_at_once_lose_nothing_and_fork_nothing()
    {
        Bench.Open(folder.Path).Dispose();
        var all = await Task.WhenAll(Enumerable.Range(0, 2).Select(w => Task.Run(() =>
        {
            using var workspace = Bench.Open(folder.Path);
            return Enumerable.Range(0, 60).Select(i => i % 10 == 0 ? Bench.Add(workspace, $"file {i}").Value.Stored.Id : Bench.Note(workspace, $"{w} {i}")).ToList();
        })));
        using var after = Bench.Open(folder.Path);
        var entries = Histories.Entries(after.Store);
        Assert.Equal(121, entries.Count);
        Assert.Equal(all.SelectMany(ids => ids).ToHashSet(), entries.Skip(1).Select(e => e.Id).ToHashSet());
        Assert.Single(after.Store.Heads("tag").Value);
        Assert.Equal(6, Bench.Verified(after).Files);
    }

    [Fact]
    public void Two_sessions_on_one_dossier_see_each_others_entries()
    {
        using var one = Bench.Open(folder.Path);
        using var two = Bench.Open(folder.Path);
        var here = DossierSession.Open(one, "tag", WordKind.Kinds).Value;
        var there = DossierSession.Open(two, "tag", WordKind.Kinds).Value;
        here.Append([WordKind.Of("a")]);
        there.Append([WordKind.Of("b")]);
        var change = here.Refresh()!;
        Assert.Equal("b", ((Word)Assert.Single(change.Added).Value).Text);
        Assert.Equal(Histories.Spell(here.View), Histories.Spell(there.View));
    }

    [Fact]
    public void A_session_uses_a_snapshot_and_passes_over_a_spoilt_one()
    {
        using var workspace = Bench.Open(folder.Path);
        workspace.Store.Append(Enumerable.Range(0, 600).Select(i => WordKind.Of("w" + i)).ToList());
        var expected = Histories.Spell(DossierSession.Open(workspace, "tag", WordKind.Kinds).Value.View);
        var key = Evidence.Folding.FoldSnapshot.Key(workspace.Store.Heads("tag").Value, WordKind.Kinds);
        Assert.NotNull(workspace.Store.Cached("tag", key));
        Assert.Equal(expected, Histories.Spell(DossierSession.Open(workspace, "tag", WordKind.Kinds).Value.View));
        workspace.Store.Cache("tag", key, Encoding.UTF8.GetBytes("nonsense"));
        Assert.Equal(expected, Histories.Spell(DossierSession.Open(workspace, "tag", WordKind.Kinds).Value.View));
    }

    private static void Copy(string from, string to)
    {
        foreach (var path in Directory.GetFiles(from, "*", SearchOption.AllDirectories))
        {
            var target = Path.Combine(to, Path.GetRelativePath(from, path));
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(path, target);
        }
    }
}
