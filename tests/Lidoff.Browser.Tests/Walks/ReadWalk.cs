using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>Marks of a rendered board read by the networks that come with the program: one by a key, corrected, taken over and taken back, all that are left from the list, and where they lie in the picture.</summary>
public sealed class ReadWalk(TheBrowser browser) : BrowserTest(browser)
{
    private const string Picture = "brindle-main-top.png";

    private static Shot Shot => BrindleShots.Named(Picture);

    [Fact]
    public async Task A_chip_is_read_by_a_key_corrected_by_typing_and_all_of_it_taken_back()
    {
        var bench = await Begin();
        var window = await Open(bench);
        await window.Go("/dossiers/band/name/U1");
        var reading = window.Page.Locator("section.reading");
        await Assertions.Expect(reading).ToContainTextAsync("Nobody has had it read by the machine yet.");
        await window.Page.Keyboard.PressAsync("i");
        // What is printed there, line by line, and drawn over the body.
        await Assertions.Expect(reading.Locator(".wholes label:first-child bdi")).ToHaveTextAsync(Mark("U1"));
        await Assertions.Expect(reading.Locator("polygon.over")).ToHaveCountAsync(3);
        // Whoever asked sees what came of it, though it stands below the picture.
        await Assertions.Expect(reading.Locator("svg.upright")).ToBeInViewportAsync(new() { Ratio = 1 });
        Assert.True(await reading.Locator("svg.upright image").EvaluateAsync<bool>("async (image) => { const seen = new Image(); seen.src = image.getAttribute('href'); await seen.decode(); return seen.naturalWidth > 100; }"));
        // The mark is that of the nRF52832 (its maker's product specification): the candidates follow.
        await Assertions.Expect(window.Page.GetByRole(AriaRole.Region, new() { Name = "Table of candidates" }).Locator("tbody tr").First).ToContainTextAsync("nRF52832");
        await Bears(window, "spot");

        // Into the line of the mark, its last sign left open, noted.
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("c");
        var line = window.Page.Locator("#mark-U1");
        await Assertions.Expect(line).ToBeFocusedAsync();
        await Assertions.Expect(line).ToHaveValueAsync(string.Join('/', Mark("U1")));
        await window.Page.Keyboard.PressAsync("End");
        await window.Page.Keyboard.PressAsync("Backspace");
        await window.Page.Keyboard.TypeAsync("?");
        await window.Page.Keyboard.PressAsync("Enter");
        await bench.Stored("band", "the corrected mark", session => session.View.Live<MarkSighting>().Select(each => each.Value.Text).SequenceEqual([string.Join('/', Mark("U1"))[..^1] + "?"]));
        await Assertions.Expect(reading).ToContainTextAsync("A person's reading counts; this one stands beside it.");
        Assert.Single(bench.Stored("band", session => session.View.Live<ReadingSighting>().ToList()));
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("Control+z");
        await bench.Stored("band", "the correction taken back", session => session.View.Live<MarkSighting>().Count == 0 && session.View.Live<ReadingSighting>().Count == 1);

        // Taken over as it is; then that, and the reading itself, taken back.
        await Assertions.Expect(reading).ToContainTextAsync("It names the spot as long as no person reads the mark.");
        await window.Page.Keyboard.PressAsync("t");
        await bench.Stored("band", "the mark taken over", session => session.View.Live<MarkSighting>().Select(each => each.Value.Text).SequenceEqual([string.Join('/', Mark("U1"))]));
        await window.Page.Keyboard.PressAsync("Control+z");
        await bench.Stored("band", "the taking over taken back", session => session.View.Live<MarkSighting>().Count == 0);
        await window.Page.Keyboard.PressAsync("Control+z");
        await bench.Stored("band", "the reading taken back", session => session.View.Live<ReadingSighting>().Count == 0);
        await Assertions.Expect(reading).ToContainTextAsync("Nobody has had it read by the machine yet.");
    }

    [Fact]
    public async Task All_marks_are_read_from_the_list_and_lie_over_the_picture()
    {
        var bench = await Begin();
        await LiveBench.Command(bench.Folder, """{"kind":"mark","spot":"U2","lines":["25Q32"]}""", "note", "band", "-");
        var window = await Open(bench);
        await window.Go("/dossiers/band/name");
        await window.Page.Keyboard.PressAsync("i");
        var panel = window.Page.Locator(".read-all");
        await Assertions.Expect(panel).ToContainTextAsync("2 marks read; 1 passed over that a person has read.");
        await Assertions.Expect(panel.Locator("summary")).ToContainTextAsync("1 spot could not be read: R1");
        await Assertions.Expect(window.Page.Locator("table.parts tbody tr", new() { HasTextString = "U1" })).ToContainTextAsync("read by the machine");
        // One page further: why, and the way to what would help.
        await panel.Locator("summary").ClickAsync();
        await Assertions.Expect(panel).ToContainTextAsync("No body was found in “" + Picture + "” where R1 was pointed at, nor text under that place.");
        await Bears(window, "list");
        // All of it is one act.
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("Control+z");
        await bench.Stored("band", "the readings taken back", session => session.View.Live<ReadingSighting>().Count == 0);
        await window.Page.Keyboard.PressAsync("Control+Shift+z");
        await bench.Stored("band", "the readings brought again", session => session.View.Live<ReadingSighting>().Count == 2);

        // What was read is passed over, what a person read is read where that is asked for.
        await panel.GetByRole(AriaRole.Checkbox).CheckAsync();
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("i");
        await Assertions.Expect(panel).ToContainTextAsync("1 mark read; 2 passed over that these networks have read before; 1 passed over that could not be read before, where nothing has changed since");

        // Why it could not be read is remembered on its page.
        await window.Go("/dossiers/band/name/R1");
        await Assertions.Expect(window.Page.Locator("section.reading .doubt")).ToContainTextAsync("No body was found in “" + Picture + "” where R1 was pointed at, nor text under that place.");
        // The way to what helps: a box around it, by two corners.
        await window.Page.Keyboard.PressAsync("Alt+b");
        await window.Arrives("/dossiers/band/see/*");
        await Assertions.Expect(window.Page.Locator("#stage[data-tool=box]")).ToBeVisibleAsync();
        await Pointer.Click(window, 0.4, 0.4);
        await Pointer.Click(window, 0.6, 0.5);
        await Assertions.Expect(window.Page.Locator("#box")).ToBeFocusedAsync();
        await Shoot(window, "box");
        await window.Enter("#box", "R1");
        await bench.Stored("band", "the box", session => session.View.Live<SpotSighting>().Single(each => each.Value.Spot == "R1").Value is { At: null, Class: "resistor", Box: { Width: > 10, Height: > 10 } });
        await Assertions.Expect(window.Page.Locator("#stage .line.box")).ToHaveCountAsync(4);

        // In the room See the lines of the selected spot are drawn where they were found.
        var sha256 = bench.Stored("band", session => session.View.Live<FileAdded>().Single().Value.Sha256);
        await window.Go("/dossiers/band/see/" + sha256);
        await window.Page.Locator(".pointed .pick", new() { HasTextString = "U2" }).ClickAsync();
        await Assertions.Expect(window.Page.Locator("#stage .line.read")).ToHaveCountAsync(4 * Mark("U2").Length);
        await Assertions.Expect(window.Page.Locator("section.reading .wholes label:first-child bdi")).ToHaveTextAsync(Mark("U2"));
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("i");
        await Assertions.Expect(window.Page.Locator("section.reading")).ToContainTextAsync("U2 reads as it did");
        // What else carries text on this board, proposed.
        await window.Page.Keyboard.PressAsync("Alt+p");
        await Assertions.Expect(window.Page.Locator(".parts li", new() { HasTextString = Mark("U1")[0] }).GetByRole(AriaRole.Button)).ToHaveTextAsync("U1");
        await Bears(window, "picture");
    }

    private static string[] Mark(string spot) => [.. Part(spot).Part.Marks];

    private static TruePart Part(string spot) => Shot.Truth.Parts.Single(part => part.Part.Spot == spot);

    private static string Spot(string spot, string kind)
    {
        var at = Part(spot).Centre;
        return FormattableString.Invariant($$"""{"kind":"spot","spot":"{{spot}}","class":"{{kind}}","picture":"{{Picture}}","point":[{{at.X}},{{at.Y}}]}""");
    }

    private async Task<LiveBench> Begin()
    {
        var workspace = Folder["workspace"];
        await LiveBench.Command(workspace, "", "new", "band");
        await using (var file = File.Create(Folder[Picture])) SceneRenderer.Render(Shot.Scene).WritePng(file);
        await LiveBench.Command(workspace, "", "add", "band", Folder[Picture]);
        await LiveBench.Command(workspace, string.Join('\n', Spot("U1", "chip"), Spot("U2", "chip"), Spot("U7", "chip"), Spot("R1", "resistor")), "note", "band", "-");
        return await Bench(workspace, 0);
    }
}
