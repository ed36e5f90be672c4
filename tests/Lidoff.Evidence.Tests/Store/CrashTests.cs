using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Tests.Folding;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Store;

/// <summary>The power goes, or the disk fails, at every single step of adding and erasing files.</summary>
public sealed class CrashTests : IDisposable
{
    private const int MoreStepsThanAny = 60;
    private const int NoSpace = 28, InputOutput = 5; // errno.h

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_steps_come_in_the_one_safe_order()
    {
        var disk = new FaultyFileLayer();
        using var workspace = Bench.Open(folder.Path, disk);
        Bench.Add(workspace, "first");
        disk.Log.Clear();
        var added = Bench.Add(workspace, "second").Value;
        var hash = added.Fact.Sha256;
        var verbs = disk.Log.Where(l => !l.StartsWith("look", StringComparison.Ordinal) && !l.StartsWith("read", StringComparison.Ordinal)).Select(l => l.Split(' ')[0] + " " + l.Split(' ')[^1]).ToList();
        var temporary = verbs[1].Split(' ')[1];
        Assert.Equal(
            [
                "folder files",
                $"create {temporary}",
                $"write {temporary}",
                $"sync {temporary}",
                $"folder {hash[..2]}",
                "sync files",
                $"rename {hash[2..]}",
                $"sync {hash[..2]}",
            ],
            verbs);

        // The last look is the one taken inside the entry's transaction: the file is there for good before it is named.
        Assert.Equal($"look {hash[2..]}", disk.Log[^1]);
    }

    [Theory]
    [InlineData(AfterCut.UnsyncedGone, "new content")]
    [InlineData(AfterCut.NamesKeptBytesGone, "new content")]
    [InlineData(AfterCut.UnsyncedGone, "kept")]
    [InlineData(AfterCut.NamesKeptBytesGone, "kept")]
    public void Whenever_the_power_goes_while_adding_nothing_acknowledged_is_lost(AfterCut how, string content)
    {
        var cuts = 0;
        for (var steps = 0; steps < MoreStepsThanAny; steps++)
        {
            var place = folder[$"{how}-{steps}"];
            var disk = new FaultyFileLayer();
            StoredEntry kept;
            StoredEntry? added = null;
            using (var workspace = Bench.Open(place, disk))
            {
                kept = Bench.Add(workspace, "kept").Value.Stored;
                disk.FailAfter(steps, () => new PowerCutException());
                try
                {
                    added = Bench.Add(workspace, content).Value.Stored;
                }
                catch (PowerCutException)
                {
                    cuts++;
                }
            }

            using var again = Bench.Open(place, disk.Restarted(how));
            Bench.Verified(again);
            Assert.Equal("kept", Bench.Read(again, kept.Entry.Files[0]));
            var ids = Histories.Entries(again.Store).Select(e => e.Id).ToList();
            Assert.Contains(kept.Id, ids);
            if (added is not null)
            {
                Assert.Contains(added.Id, ids);
                Assert.Equal(content, Bench.Read(again, added.Entry.Files[0]));
                Assert.Equal(steps, cuts);
                Assert.InRange(cuts, 8, MoreStepsThanAny);
                return;
            }

            Assert.DoesNotContain(again.Files.List().Foreign, _ => true);
            Assert.True(Bench.Add(again, content).Ok);
            Bench.Verified(again);
        }

        Assert.Fail("adding never came to its end");
    }

    [Theory]
    [InlineData(AfterCut.UnsyncedGone)]
    [InlineData(AfterCut.NamesKeptBytesGone)]
    public void Whenever_the_power_goes_while_erasing_the_erased_file_and_its_thumbnail_are_gone_after_the_next_opening(AfterCut how)
    {
        for (var steps = 0; steps < MoreStepsThanAny; steps++)
        {
            var place = folder[$"{how}-{steps}"];
            var disk = new FaultyFileLayer();
            string hash;
            var whole = false;
            using (var workspace = Bench.Open(place, disk))
            {
                var added = Bench.Add(workspace, "former owner").Value;
                hash = added.Fact.Sha256;
                File.WriteAllText(Directory.CreateDirectory(Path.Combine(workspace.CacheFolder, "thumbs", hash[..2])).FullName + $"/{hash}-160.jpg", "former owner, small");
                disk.FailAfter(steps, () => new PowerCutException());
                Assert.True(workspace.Store.Append([WordKind.Erase(added.Stored.Id)]).Ok);
                try
                {
                    Assert.Equal(1, workspace.RemoveErasedFiles().Value);
                    whole = true;
                }
                catch (PowerCutException)
                {
                    // Reopening below has to finish what was begun.
                }
            }

            using var again = Bench.Open(place, disk.Restarted(how));
            Assert.False(again.Files.Has(hash));
            Assert.Empty(Directory.EnumerateFiles(again.CacheFolder, "*", SearchOption.AllDirectories));
            Assert.Equal(1, Bench.Verified(again).Erased);
            if (whole) return;
        }

        Assert.Fail("erasing never came to its end");
    }

    public static TheoryData<int, bool, string> Failures => new()
    {
        { NoSpace, false, "The disk is full: a.txt could not grow. Nothing of this step was stored; what was stored before is safe. Make room and try again." },
        { NoSpace, true, "The disk is full: a.txt could not grow. Nothing of this step was stored; what was stored before is safe. Make room and try again." },
        { InputOutput, false, "a.txt could not be read or written (Input/output error). Nothing of this step was stored." },
        { InputOutput, true, "a.txt could not be read or written (Input/output error). Nothing of this step was stored." },
    };

    [Theory]
    [MemberData(nameof(Failures))]
    public void Whenever_the_disk_fails_while_adding_one_sentence_says_so_and_nothing_is_half_stored(int errno, bool shortWrite, string say)
    {
        var failed = 0;
        var disk = new FaultyFileLayer();
        using var workspace = Bench.Open(folder.Path, disk);
        Bench.Add(workspace, "kept");
        for (var steps = 0; steps < MoreStepsThanAny; steps++)
        {
            var before = Histories.Entries(workspace.Store).Count;
            var content = "content " + steps;
            disk.FailAfter(steps, () => new IOException("Input/output error", errno), shortWrite);
            var outcome = Bench.Add(workspace, content);
            if (outcome.Ok && failed == steps)
            {
                Assert.InRange(failed, 8, MoreStepsThanAny);
                return;
            }

            disk.FailAfter(int.MaxValue, () => new IOException());
            failed++;
            Assert.Equal(say, Assert.Single(outcome.Faults).Say);
            Assert.Equal(before, Histories.Entries(workspace.Store).Count);
            Assert.DoesNotContain(disk.Files(Path.Combine(folder.Path, "files")), _ => true);
            Bench.Verified(workspace);
            Assert.True(Bench.Add(workspace, content).Ok);
        }

        Assert.Fail("adding never came to its end");
    }

    [Fact]
    public void After_a_step_that_failed_the_next_add_is_safe_from_a_power_cut_all_the_same()
    {
        for (var steps = 0; steps < MoreStepsThanAny; steps++)
        {
            // The first file of a workspace: every folder is still to be made, and each making may go unsynced.
            var place = folder["retry-" + steps];
            var disk = new FaultyFileLayer();
            StoredEntry acknowledged;
            bool failed;
            using (var workspace = Bench.Open(place, disk))
            {
                disk.FailAfter(steps, () => new IOException("Input/output error", InputOutput));
                failed = !Bench.Add(workspace, "content").Ok;
                disk.FailAfter(int.MaxValue, () => new IOException());
                acknowledged = Bench.Add(workspace, "content").Value.Stored;
            }

            using var again = Bench.Open(place, disk.Restarted(AfterCut.UnsyncedGone));
            Assert.Equal("content", Bench.Read(again, acknowledged.Entry.Files[0]));
            Bench.Verified(again);
            if (failed) continue;
            Assert.InRange(steps, 8, MoreStepsThanAny);
            return;
        }

        Assert.Fail("adding never came to its end");
    }

    [Fact]
    public void A_merge_does_not_trust_a_name_that_somebody_else_has_not_synced_yet()
    {
        var disk = new FaultyFileLayer();
        using var from = Bench.Open(folder["from"]);
        var added = Bench.Add(from, "shared content").Value;
        StoredEntry[] incoming = [.. Histories.Entries(from.Store)];
        using (var into = Bench.Open(folder["into"], disk))
        {
            // Another process has renamed the same content into its place and was stopped before it synced the folder.
            for (var steps = 0; !into.Files.Has(added.Fact.Sha256); steps++)
            {
                disk.FailAfter(steps, () => new IOException("Input/output error", InputOutput));
                into.Files.Take(new MemoryStream("shared content"u8.ToArray()), "other");
            }

            disk.FailAfter(int.MaxValue, () => new IOException());
            Assert.True(WorkspaceMerging.Merge(into, from, ErasureRule.Refuse).Ok);
        }

        using var again = Bench.Open(folder["into"], disk.Restarted(AfterCut.UnsyncedGone));
        Assert.Equal("shared content", Bench.Read(again, added.Fact.Sha256));
        var ids = Histories.Entries(again.Store).Select(e => e.Id).ToList();
        Assert.All(incoming, entry => Assert.Contains(entry.Id, ids));
        Bench.Verified(again);
    }

    [Fact]
    public void A_merge_onto_a_full_disk_takes_nothing_in()
    {
        using var from = Bench.Open(folder["from"]);
        for (var i = 0; i < 3; i++) Bench.Add(from, "content " + i);
        for (var steps = 0; steps < MoreStepsThanAny; steps++)
        {
            var disk = new FaultyFileLayer();
            using var into = Bench.Open(folder[$"into-{steps}"], disk);
            var before = Bench.View(into);
            disk.FailAfter(steps, () => new IOException("No space left on device", NoSpace));
            var merged = WorkspaceMerging.Merge(into, from, ErasureRule.Refuse);
            disk.FailAfter(int.MaxValue, () => new IOException());
            if (merged.Ok)
            {
                Bench.Verified(into);
                Assert.InRange(steps, 8, MoreStepsThanAny);
                return;
            }

            Assert.StartsWith("The disk is full: ", Assert.Single(merged.Faults).Say, StringComparison.Ordinal);
            Assert.Equal(before, Bench.View(into));
            Bench.Verified(into);
            Assert.True(WorkspaceMerging.Merge(into, from, ErasureRule.Refuse).Ok);
            Bench.Verified(into);
        }

        Assert.Fail("merging never came to its end");
    }

    [Fact]
    public void A_temporary_file_of_a_dead_writer_is_swept_and_one_of_a_living_writer_stays()
    {
        using (Bench.Open(folder.Path))
        {
            var files = folder["files"];
            Directory.CreateDirectory(files);
            File.WriteAllText(Path.Combine(files, "new-dead-1"), "half");
            using var living = new DiskFileLayer().CreateNew(Path.Combine(files, "new-living-1"));
            using (Bench.Open(folder.Path)) Assert.Equal(["new-living-1"], Directory.GetFiles(files).Select(Path.GetFileName));
        }

        using (Bench.Open(folder.Path)) Assert.Empty(Directory.GetFiles(folder["files"]));
    }
}
