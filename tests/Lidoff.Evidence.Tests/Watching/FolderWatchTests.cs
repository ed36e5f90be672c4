using Lidoff.Evidence.Watching;
using Lidoff.Numbers.Failing;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Watching;

public sealed class FolderWatchTests : IDisposable
{
    private readonly TempFolder outer = new();
    private readonly List<(string Name, string Text)> taken = [];
    private readonly HashSet<string> known = new(StringComparer.Ordinal);
    private string? refuses;

    public FolderWatchTests() => Directory.CreateDirectory(Card);

    private string Card => outer["card"];

    public void Dispose() => outer.Dispose();

    [Fact]
    public async Task A_file_is_taken_at_the_second_look_that_finds_it_unchanged_and_never_again()
    {
        var watch = Watch();
        Put("b.jpg", "two");
        Put("a.jpg", "one");
        Assert.Empty(await watch.Look(TestContext.Current.CancellationToken));
        Assert.Equal(2, watch.Waiting);
        Assert.Equal(["“a.jpg” was taken in from the watched folder.", "“b.jpg” was taken in from the watched folder."], await Say(watch));
        Assert.Equal([("a.jpg", "one"), ("b.jpg", "two")], taken);
        Assert.Empty(await Say(watch));
        Assert.Empty(await Say(watch));
        Assert.Equal(0, watch.Waiting);
    }

    [Fact]
    public async Task A_file_that_still_grows_waits()
    {
        var watch = Watch();
        for (var i = 0; i < 4; i++)
        {
            File.AppendAllText(Path.Combine(Card, "slow.jpg"), "more");
            Assert.Empty(await Say(watch));
        }

        Assert.Single(await Say(watch));
        Assert.Equal(("slow.jpg", "moremoremoremore"), Assert.Single(taken));
    }

    [Fact]
    public async Task Rewriting_with_the_same_length_is_noticed_by_its_time()
    {
        var watch = Watch();
        Put("a.jpg", "one");
        await Say(watch);
        Put("a.jpg", "two", minutes: 1);
        Assert.Empty(await Say(watch));
        await Say(watch);
        Assert.Equal(("a.jpg", "two"), Assert.Single(taken));
    }

    [Fact]
    public async Task The_same_content_under_another_name_is_not_taken_twice_nor_what_the_dossier_has()
    {
        // FIPS 180-2, B.1: SHA-256 of "abc".
        known.Add("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        Put("a.jpg", "one");
        Put("copy of a.jpg", "one");
        Put("old.jpg", "abc");
        var watch = Watch();
        await Say(watch);
        Assert.Equal(
            ["“a.jpg” was taken in from the watched folder.", "“copy of a.jpg” is in the dossier already and was not taken again.", "“old.jpg” is in the dossier already and was not taken again."],
            await Say(watch));
        Assert.Single(taken);
    }

    [Fact]
    public async Task A_picture_overwritten_under_its_name_is_another_picture()
    {
        var watch = Watch();
        Put("live.jpg", "one");
        await Say(watch);
        await Say(watch);
        Put("live.jpg", "other", minutes: 1);
        await Say(watch);
        await Say(watch);
        Assert.Equal([("live.jpg", "one"), ("live.jpg", "other")], taken);
    }

    [Fact]
    public async Task Folders_links_hidden_and_unfinished_files_are_left_alone()
    {
        File.WriteAllText(outer["secret.txt"], "secret");
        Directory.CreateDirectory(Path.Combine(Card, "inside"));
        File.WriteAllText(Path.Combine(Card, "inside", "deep.jpg"), "deep");
        File.CreateSymbolicLink(Path.Combine(Card, "link.jpg"), outer["secret.txt"]);
        File.CreateSymbolicLink(Path.Combine(Card, "nowhere.jpg"), outer["nowhere"]);
        Directory.CreateSymbolicLink(Path.Combine(Card, "linked"), outer.Path);
        foreach (var name in new[] { ".hidden.jpg", "a.jpg.part", "a.TMP", "~$note.docx", "b.jpg.crdownload", "c.jpg~" }) Put(name, name);
        var watch = Watch();
        await Say(watch);
        Assert.Empty(await Say(watch));
        Assert.Equal(0, watch.Waiting);
        Assert.Empty(taken);
    }

    [Fact]
    public async Task A_file_that_turns_into_a_link_between_two_looks_is_not_followed()
    {
        File.WriteAllText(outer["secret.txt"], "one");
        var watch = Watch();
        Put("a.jpg", "one");
        await Say(watch);
        File.Delete(Path.Combine(Card, "a.jpg"));
        File.CreateSymbolicLink(Path.Combine(Card, "a.jpg"), outer["secret.txt"]);
        Assert.Empty(await Say(watch));
        Assert.Empty(await Say(watch));
        Assert.Empty(taken);
    }

    [Fact]
    public async Task A_folder_that_goes_and_comes_back_is_said_once_each()
    {
        var watch = Watch();
        Put("a.jpg", "one");
        await Say(watch);
        Directory.Move(Card, outer["pulled"]);
        Assert.Equal([$"The watched folder “{Card}” cannot be read: it is gone, or its card or share is. It is looked for again."], await Say(watch));
        Assert.Empty(await Say(watch));
        Directory.Move(outer["pulled"], Card);
        // The file has to be seen twice anew: what was on the card before says nothing about the card now.
        Assert.Equal([$"The watched folder “{Card}” is there again."], await Say(watch));
        Assert.Equal(["“a.jpg” was taken in from the watched folder."], await Say(watch));
    }

    [Fact]
    public async Task What_is_refused_is_said_once_with_its_sentence()
    {
        var watch = Watch(mostBytes: 5);
        Put("empty.jpg", "");
        Put("large.jpg", "123456");
        Put("no.jpg", "12345");
        refuses = "The disk is full.";
        await Say(watch);
        Assert.Equal(
            [
                "“empty.jpg” is empty and was not taken. It is looked at again once something is written to it.",
                "“large.jpg” has 6 bytes, more than the 5 that the watch takes; add it with `lidoff add`. It stays where it is.",
                "The disk is full.",
            ],
            await Say(watch));
        Assert.Empty(await Say(watch));
        refuses = null;
        Put("empty.jpg", "now");
        await Say(watch);
        Assert.Equal(["“empty.jpg” was taken in from the watched folder."], await Say(watch));
        Assert.Equal(3, Directory.GetFiles(Card).Length);
    }

    [Fact]
    public async Task A_locked_file_waits_until_it_can_be_opened()
    {
        var watch = Watch();
        Put("a.jpg", "one");
        await Say(watch);
        using (new FileStream(Path.Combine(Card, "a.jpg"), FileMode.Open, FileAccess.ReadWrite, FileShare.None))
        {
            Assert.Empty(await Say(watch));
            Assert.Equal(1, watch.Waiting);
        }

        Assert.Single(await Say(watch));
    }

    [Fact]
    public async Task A_name_that_would_reorder_the_line_is_shown_without_its_signs()
    {
        var watch = Watch();
        Put("a\u202Egnp.jpg\n", "one");
        await Say(watch);
        Assert.Equal(["“a·gnp.jpg·” was taken in from the watched folder."], await Say(watch));
    }

    [Fact]
    public async Task Running_tells_what_each_look_finds_until_it_is_stopped()
    {
        Put("a.jpg", "one");
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(TestContext.Current.CancellationToken);
        var told = new TaskCompletionSource<WatchEvent>();
        var run = Watch().Run(TimeProvider.System, TimeSpan.FromMilliseconds(5), told.SetResult, stop.Token);
        Assert.Equal(WatchSight.Taken, (await told.Task.WaitAsync(TimeSpan.FromSeconds(20), stop.Token)).Sight);
        await stop.CancelAsync();
        await run.WaitAsync(TimeSpan.FromSeconds(20), TestContext.Current.CancellationToken);
    }

    private static async Task<IEnumerable<string>> Say(FolderWatch watch) => (await watch.Look(TestContext.Current.CancellationToken)).Select(each => each.Say);

    private FolderWatch Watch(long mostBytes = FolderWatch.UsualCap) => new(Card, known.Contains, Take, mostBytes);

    private async Task<Outcome<string>> Take(Stream content, string name, CancellationToken stop)
    {
        if (refuses is not null) return new Fault(name, "room", refuses);
        using var reader = new StreamReader(content, leaveOpen: true);
        taken.Add((name, await reader.ReadToEndAsync(stop)));
        return name;
    }

    private void Put(string name, string text, int minutes = 0)
    {
        var path = Path.Combine(Card, name);
        File.WriteAllText(path, text);
        if (minutes > 0) File.SetLastWriteTimeUtc(path, File.GetLastWriteTimeUtc(path).AddMinutes(minutes));
    }
}
