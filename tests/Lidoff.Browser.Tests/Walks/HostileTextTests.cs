using System.Text.Json;
using Lidoff.Bench.Rooms;
using Lidoff.Browser.Tests.Fixtures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>Names, marks and labels that a stranger may have written: shown as text on every page, never obeyed.</summary>
public sealed class HostileTextTests(TheBrowser browser) : BrowserTest(browser)
{
    private const string Script = "<script>window.hit=1</script><img src=x onerror=window.hit=1>";
    private const string Turned = "safe\u202Egpj.exe";

    // As long as most texts may be; claims, steps and plans are held to 2000 characters, questions to 1000.
    private static readonly string Endless = (Script + Turned + "../../etc/passwd" + new string('Ω', 10_000))[..10_000];

    [Fact]
    public async Task Hostile_names_and_marks_are_shown_harmless_in_every_room()
    {
        var bench = await Bench("band");
        var line = new string('Ω', 200);
        string[] lines =
        [
            Line(new { kind = "spot", spot = "U1", role = Script, why = Endless }),
            Line(new { kind = "mark", spot = "U1", lines = new[] { Script, Turned, line, "../../etc/passwd" } }),
            Line(new { kind = "claim", claim = "C1", text = Endless[..2000] }),
            Line(new { kind = "specimen", specimen = "A", says = Endless, from = Turned }),
            Line(new { kind = "step", specimen = "A", does = Script, tool = Turned, destroys = Endless[..2000] }),
            Line(new { kind = "plan", plan = "P1", does = Endless[..2000], why = Turned }),
            Line(new { kind = "pause", in_hand = Script, next = Turned, note = Endless[..2000] }),
            Line(new { kind = "question", question = "Q1", text = Endless[..1000], why = Turned }),
            Line(new { kind = "pad", pad = "TP1", name = "<script>window.hit=1</script>" }),
            Line(new { kind = "rail", rail = "VSYS", why = Script, from = "U1" }),
            Line(new { kind = "touch", a = "U1.1", b = "TP1", beep = true }),
        ];
        await LiveBench.Command(bench.Folder, string.Join('\n', lines), "note", "band", "-");

        var window = await Open(bench, Look.Narrow);
        // The answer to a file that is called "..": no name is left of it.
        window.Watch.Forgive("status of 400");
        window.Page.Dialog += (_, dialog) => Assert.Fail("a dialog opened: " + dialog.Message);
        await window.Go("/dossiers/band/see");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", new[] { Files.Picture("<script>window.hit=1<script>.png"), Files.Picture(Turned), Files.Picture("..") , Files.Picture(new string('n', 251) + ".png") });
        await Assertions.Expect(window.Page.Locator("form[data-upload] output")).ToContainTextAsync("added.");
        foreach (var path in RoomList.All.Select(room => "/dossiers/band/" + room.Name).Append("/").Append("/dossiers/band"))
        {
            await window.Go(path);
            await Shoot(window, path);
            Assert.False(await window.Page.EvaluateAsync<bool>("'hit' in window"), path);
            Assert.Equal(0, await window.Page.EvaluateAsync<int>("[...document.querySelectorAll('img')].filter(i => i.getAttribute('src') === 'x').length"));
            // No character that turns the reading direction stands on the page itself.
            Assert.False(await window.Page.EvaluateAsync<bool>("/[\\u202A-\\u202E\\u2066-\\u2069]/.test(document.body.innerText)"), path);
            Assert.True(await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390, path + " needs sideways scrolling");
        }

        await window.Go("/dossiers/band/name");
        await Assertions.Expect(window.Page.Locator("main")).ToContainTextAsync(Script);
        await Assertions.Expect(window.Page.Locator("main")).ToContainTextAsync("safe⟨U+202E⟩gpj.exe");
    }

    [Theory]
    [InlineData("open", "#step", "a text of 1 to 2000 characters")]
    [InlineData("open", "#plan", "a text of 1 to 2000 characters")]
    [InlineData("trace", "#touch", "Add beep, no beep, open, ohms or volts.")]
    [InlineData("trace", "#pad", "a text of 1 to 20 characters")]
    [InlineData("tell", "#claim", "a text of 1 to 2000 characters")]
    public async Task A_text_without_end_gets_a_sentence_stays_in_the_field_and_leaves_the_page_usable(string room, string field, string expected)
    {
        var bench = await Bench("band");
        var window = await Open(bench, Look.Narrow);
        await window.Go("/dossiers/band/" + room);
        var endless = Turned + new string('Ω', 60_000);
        await window.Page.FillAsync(field, endless);
        await window.Page.PressAsync(field, "Enter");
        var fault = window.Page.Locator("form.entry", new() { Has = window.Page.Locator(field) }).Locator(".fault").First;
        // What is wrong and what is expected, in a sentence that somebody can read to its end.
        await Assertions.Expect(fault).ToContainTextAsync("characters");
        var sentence = await fault.InnerTextAsync();
        Assert.InRange(sentence.Length, 20, 400);
        // No more of it than a beginning is quoted, and what was expected stands behind it.
        Assert.DoesNotContain(new string('Ω', 61), sentence, StringComparison.Ordinal);
        Assert.Contains(expected, sentence, StringComparison.Ordinal);
        await Assertions.Expect(window.Page.Locator(field)).ToHaveValueAsync(endless);
        Assert.True(await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390, "needs sideways scrolling");
        await Shoot(window, room + field[1..]);
        // The page goes on.
        await window.Page.FillAsync(field, "");
        await Assertions.Expect(window.Page.Locator("#ask")).ToBeEditableAsync();
        await window.Page.FillAsync("#ask", "What is U1?");
        await window.Page.PressAsync("#ask", "Enter");
        await Assertions.Expect(window.Page.Locator(".board")).ToContainTextAsync("What is U1?");
    }

    [Theory]
    [InlineData("../../etc")]
    [InlineData("<script>")]
    [InlineData("\u202Eband")]
    public async Task A_name_that_cannot_be_one_gets_a_sentence_and_stays_in_the_field(string name)
    {
        var bench = await Bench();
        var window = await Open(bench);
        await window.Go("/");
        await window.Page.FillAsync("#new", name);
        await window.Page.PressAsync("#new", "Enter");
        await Assertions.Expect(window.Page.Locator("main [role=status]").Last).ToContainTextAsync("cannot be a dossier's short name");
        await Assertions.Expect(window.Page.Locator("#new")).ToHaveValueAsync(name);
    }

    private static string Line(object line) => JsonSerializer.Serialize(line);
}
