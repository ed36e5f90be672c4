using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Watching;
using Lidoff.TestSupport;

namespace Lidoff.Bench.Tests.Working;

public sealed class WatchDeskTests : IDisposable
{
    private readonly TempFolder card = new();
    private readonly FakeBench bench = new();
    private readonly WatchDesk desk;

    public WatchDeskTests()
    {
        desk = new(bench, TimeProvider.System, bench.Workspace.Folder, TimeSpan.FromMilliseconds(5));
        bench.Set("collar", "A collar");
    }

    public void Dispose()
    {
        desk.Dispose();
        bench.Dispose();
        card.Dispose();
    }

    [Fact]
    public async Task What_lands_in_the_folder_lands_in_the_dossier_once()
    {
        File.WriteAllText(card["note.txt"], "what the microscope wrote");
        Assert.True(desk.Start("collar", card.Path).Value.Running);
        await Until(() => desk.State("collar").TakenInAll == 1);
        var state = desk.State("collar");
        Assert.Equal(["note.txt"], state.Taken);
        Assert.Equal("Watching: 1 file taken in.", state.Say);
        Assert.Empty(state.Refused);
        Assert.Equal("watch", bench.View("collar", open => open.Session.View.Live<FileAdded>().Single().Value)!.From);

        // Another start finds the content in the dossier and says so without taking it again.
        var told = new List<WatchEvent>();
        using var listening = desk.Listen((_, each) => { lock (told) told.Add(each); });
        Assert.True(desk.Start("collar", card.Path).Ok);
        await Until(() => { lock (told) return told.Count == 2; });
        // First it may still be being written, then it is known.
        Assert.Equal([(WatchSight.Waiting, "Watching: 0 files taken in, 1 still being written."), (WatchSight.Known, "“note.txt” is in the dossier already and was not taken again.")], told.Select(each => (each.Sight, each.Say)));
        Assert.Equal("Watching: 0 files taken in.", desk.State("collar").Say);
        Assert.Single(bench.Added);
    }

    [Fact]
    public async Task A_broken_picture_is_kept_and_said()
    {
        File.WriteAllBytes(card["cut.jpg"], [0xFF, 0xD8, 0xFF, 0xE0, 0, 16]);
        desk.Start("collar", card.Path);
        await Until(() => desk.State("collar").Refused.Count == 1);
        Assert.Equal("“cut.jpg” begins like a JPEG picture, but its header cannot be read.", desk.State("collar").Refused[0]);
        Assert.Equal(["cut.jpg"], desk.State("collar").Taken);
    }

    [Fact]
    public async Task A_stopped_watch_takes_nothing_more()
    {
        desk.Start("collar", card.Path);
        desk.Stop("collar");
        Assert.Equal("The folder is not watched any more. What was taken in stays.", desk.State("collar").Say);
        Assert.False(desk.State("collar").Running);
        File.WriteAllText(card["late.txt"], "late");
        await Task.Delay(100, TestContext.Current.CancellationToken);
        Assert.Empty(bench.Added);
        desk.Stop("collar");
        desk.Stop("unknown");
    }

    [Fact]
    public async Task A_refusing_store_and_a_folder_that_goes_are_said()
    {
        bench.Refuses = new("disk", "room", "The disk is full.");
        var folder = Directory.CreateDirectory(card["dcim"]).FullName;
        File.WriteAllText(Path.Combine(folder, "a.txt"), "a");
        desk.Start("collar", folder);
        await Until(() => desk.State("collar").Refused.Count == 1);
        Assert.Equal(["The disk is full."], desk.State("collar").Refused);
        Directory.Move(folder, card["pulled"]);
        await Until(() => desk.State("collar").Say == "The folder cannot be read now; it is looked for again every second.");
        Directory.Move(card["pulled"], folder);
        await Until(() => desk.State("collar").Say == "Watching: 0 files taken in.");
    }

    [Fact]
    public async Task A_fault_of_the_program_ends_the_watch_with_a_sentence()
    {
        desk.Start("collar", card.Path);
        bench.Breaks = "wires crossed.";
        File.WriteAllText(card["a.txt"], "a");
        await Until(() => !desk.State("collar").Running);
        Assert.Equal("The watch came to an end by a fault of Lidoff itself: wires crossed. What was taken in stays; start it again.", desk.State("collar").Say);
    }

    [Fact]
    public void What_cannot_be_watched_is_refused_with_its_sentence()
    {
        Assert.Equal("There is no folder “card” that can be watched; give the whole path of one that is there.", Assert.Single(desk.Start("collar", "card").Faults).Say);
        Assert.Equal($"There is no folder “{card["gone"]}” that can be watched; give the whole path of one that is there.", Assert.Single(desk.Start("collar", card["gone"]).Faults).Say);
        Assert.StartsWith("The folder “", Assert.Single(desk.Start("collar", Path.Combine(bench.Workspace.Folder, "files", "..")).Faults).Say, StringComparison.Ordinal);
        Assert.StartsWith("There is no dossier \"other\"", Assert.Single(desk.Start("other", card.Path).Faults).Say, StringComparison.Ordinal);
        Assert.Equal(WatchState.None, desk.State("collar"));
    }

    [Fact]
    public async Task Many_hands_at_once_break_nothing()
    {
        for (var i = 0; i < 10; i++) File.WriteAllText(card[$"f{i}.txt"], "file " + i);
        await Task.WhenAll(Enumerable.Range(0, 8).Select(hand => Task.Run(() =>
        {
            for (var i = 0; i < 10; i++)
            {
                if (hand % 4 == 3) desk.Stop("collar");
                else if (hand % 4 == 2) desk.State("collar");
                else desk.Start("collar", card.Path);
            }
        })));
        desk.Start("collar", card.Path);
        await Until(() => bench.View("collar", open => open.Session.View.Live<FileAdded>().Count >= 10 ? "all" : "") == "all");
        Assert.Equal(10, bench.View("collar", open => open.Session.View.Live<FileAdded>())!.Select(file => file.Value.Sha256).Distinct().Count());
        Assert.Equal(10, bench.View("collar", open => open.Session.View.Live<FileAdded>())!.Count);
        // The store is asked and not the fake in front of it: one stopped at the last instant has stored its file and hears of the stop alone.
    }

    private static async Task Until(Func<bool> there)
    {
        for (var i = 0; !there(); i++)
        {
            Assert.True(i < 2000, "waited 20 s in vain");
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }
    }
}
