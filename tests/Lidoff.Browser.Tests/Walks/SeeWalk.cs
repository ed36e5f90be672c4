using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Seeing.Kinds;
using Microsoft.Playwright;
using static Lidoff.Browser.Tests.Walks.Pointer;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The first three minutes: a picture, two clicks and a length, pointing at things and saying what they are.</summary>
public sealed class SeeWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_dropped_picture_gets_its_scale_and_its_letters()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await Begin(window);
        await Click(window, 0.3, 0.5);
        await Click(window, 0.7, 0.5);
        await window.Enter("#scale", "26 mm ± 0.05");
        await Pointing(window);
        await Click(window, 0.45, 0.4);
        await Say(window, "radio beside the antenna");
        await Click(window, 0.6, 0.6);
        await Say(window, "J flat cable because it goes to the lamp");
        await Assertions.Expect(window.Page.Locator("ul.pointed")).ToContainTextAsync("flat cable");
        // Clicks at 45 and 60 % between ends at 30 and 70 %, whatever the zoom.
        await Holds(bench, (0.45 - 0.3) / 0.4, (0.6 - 0.3) / 0.4);
        await Shoot(window, "labelled");
    }

    [Fact]
    public async Task The_line_to_type_on_is_in_view_wherever_the_last_point_lies()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await Begin(window);
        foreach (var (x, y) in new[] { (0.7, 0.05), (0.7, 0.97), (0.99, 0.5), (0.01, 0.97) })
        {
            await window.Page.Keyboard.PressAsync("s");
            await Click(window, 0.3, 0.5);
            await Click(window, x, y);
            await Assertions.Expect(window.Page.Locator("#scale")).ToBeFocusedAsync();
            await window.Page.WaitForFunctionAsync("() => { const e = document.querySelector('#scale'), r = e.getBoundingClientRect(); return document.elementFromPoint(r.x + r.width / 2, r.y + r.height / 2) === e; }");
            await window.Page.Keyboard.PressAsync("Escape");
        }
    }

    [Fact]
    public async Task The_same_by_keyboard_alone()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await Begin(window);
        var keys = window.Page.Keyboard;
        await keys.PressAsync("g");
        await Assertions.Expect(window.Page.Locator("#stage")).ToBeFocusedAsync();
        await Move(keys, "ArrowLeft", 20);
        await keys.PressAsync("Enter");
        await Move(keys, "ArrowRight", 40);
        await keys.PressAsync("Enter");
        await Assertions.Expect(window.Page.Locator("#scale")).ToBeFocusedAsync();
        await keys.TypeAsync("26 mm ± 0.05");
        await keys.PressAsync("Enter");
        await bench.Stored("device-1", "the scale", session => session.View.Live<ScaleSighting>().Count == 1);
        // The keys go on from the picture.
        await Assertions.Expect(window.Page.Locator("#stage")).ToBeFocusedAsync();
        await Pointing(window);
        foreach (var words in new[] { "radio beside the antenna", "J flat cable because it goes to the lamp" })
        {
            await Move(keys, "ArrowDown", 8);
            await keys.PressAsync("Enter");
            await Assertions.Expect(window.Page.Locator("[id^=spot-]:is(input)")).ToBeFocusedAsync();
            await keys.TypeAsync(words);
            await keys.PressAsync("Enter");
            await Assertions.Expect(window.Page.Locator("#stage")).ToBeFocusedAsync();
        }

        await Holds(bench);
        // Every key of the page can be looked up, and the list closes again.
        await keys.PressAsync("?");
        await Assertions.Expect(window.Page.Locator("dialog#keys")).ToContainTextAsync("Point");
        await keys.PressAsync("Escape");
        await Assertions.Expect(window.Page.Locator("dialog#keys")).ToBeHiddenAsync();
        await keys.PressAsync("Control+z");
        await bench.Stored("device-1", "one spot taken back", session => session.View.Live<SpotSighting>().Count == 1);
    }

    [Fact]
    public async Task The_same_at_390_px_and_through_a_reload_in_mid_entry()
    {
        var bench = await Bench();
        var window = await Open(bench, Look.Narrow);
        await Begin(window);
        await Click(window, 0.2, 0.5);
        await Click(window, 0.8, 0.5);
        await window.Enter("#scale", "26 mm ± 0.05");
        await Pointing(window);
        await Click(window, 0.45, 0.4);
        await window.Page.Locator("[id^=spot-]:is(input)").PressSequentiallyAsync("radio beside the");
        await window.Settled();
        await window.Page.ReloadAsync();
        await window.Settled();
        // The point that was set and the words that were typed are both there again.
        await Assertions.Expect(window.Page.Locator("[id^=spot-]:is(input)")).ToHaveValueAsync("radio beside the");
        await window.Page.Locator("[id^=spot-]:is(input)").PressAsync("End");
        await Say(window, " antenna");
        await Click(window, 0.6, 0.6);
        await Say(window, "J flat cable because it goes to the lamp");
        await Holds(bench, (0.45 - 0.2) / 0.6, (0.6 - 0.2) / 0.6);
        Assert.True(await window.Page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390);
    }

    [Fact]
    public async Task Keys_zoom_about_the_mouse_else_the_selected_spot_else_the_middle()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Of("ruled.png", Files.Ruled));
        await window.Arrives("/dossiers/band/see/*");
        var (left, right) = await Squares(window.Page);
        var stage = (await window.Page.Locator("#stage").BoundingBoxAsync())!;
        await window.Page.Keyboard.PressAsync("p");
        await Pointing(window);

        // The middle, before anything is selected and while the mouse is elsewhere.
        await window.Page.Mouse.MoveAsync(5, 5);
        await window.Page.Keyboard.PressAsync("+");
        await Moved(window, left, (stage.Width / 2, stage.Height / 2), 1.5);
        await window.Page.Keyboard.PressAsync("-");
        await Moved(window, left, (stage.Width / 2, stage.Height / 2), 1);

        // The mouse: what lies under it stays there.
        await window.Page.Mouse.MoveAsync((float)(stage.X + right.X), (float)(stage.Y + right.Y));
        await window.Page.Keyboard.PressAsync("+");
        await Moved(window, left, right, 1.5);
        await window.Page.Keyboard.PressAsync("-");
        await Moved(window, left, right, 1);

        // The selected spot, where the mouse is away.
        await ClickAt(window, left.X, left.Y);
        await Say(window, "radio");
        await Assertions.Expect(window.Page.Locator("circle.spot.on")).ToHaveCountAsync(1);
        await window.Page.Mouse.MoveAsync(5, 5);
        await window.Page.Keyboard.PressAsync("+");
        await Moved(window, right, left, 1.5);
    }

    // Where a square that was at `was` ends up when everything grows by a factor about a place.
    private static Task Moved(Window window, (double X, double Y) was, (double X, double Y) about, double by) => Patience.Until("zoomed about its place", async () =>
    {
        var want = (X: about.X + ((was.X - about.X) * by), Y: about.Y + ((was.Y - about.Y) * by));
        var (left, right) = await Squares(window.Page);
        return new[] { left, right }.Any(square => Math.Abs(square.X - want.X) < 2 && Math.Abs(square.Y - want.Y) < 2);
    });

    [Fact]
    public async Task A_turned_view_is_pointed_at_where_it_is_seen_and_stays_turned()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Of("ruled.png", Files.Ruled));
        await window.Arrives("/dossiers/band/see/*");
        var (left, right) = await Squares(window.Page);
        await Assertions.Expect(window.Page.Locator("#stage")).ToBeVisibleAsync();
        await window.Page.Keyboard.PressAsync("r");
        await window.Page.Keyboard.PressAsync("r");
        // Upside down: the square at the left is seen at the right, as far below the middle as it was above.
        var box = (await window.Page.Locator("#stage").BoundingBoxAsync())!;
        var (there, here) = (default((double X, double Y)), default((double X, double Y)));
        await Patience.Until("the picture is drawn upside down", async () =>
        {
            (there, here) = await Squares(window.Page);
            return Math.Abs(here.X - (box.Width - left.X)) < 2 && Math.Abs(here.Y - (box.Height - left.Y)) < 2 && Math.Abs(there.X - (box.Width - right.X)) < 2;
        });
        await window.Page.Keyboard.PressAsync("s");
        await ClickAt(window, here.X, here.Y);
        await ClickAt(window, there.X, there.Y);
        await window.Enter("#scale", "26 mm ± 0.05");
        await bench.Stored("band", "the scale", session => session.View.Live<ScaleSighting>().Count == 1);
        await bench.Stored("band", "the place of the left square, not of where it is seen", session =>
            session.View.Live<ScaleSighting>()[0].Value is { } scale && Math.Abs(scale.Reference.From.X - 100) < 2 && Math.Abs(scale.Reference.To.X - 500) < 2);
        // A quarter more lies on its side, and the arrows go as the screen does.
        await window.Page.Keyboard.PressAsync("r");
        await window.Page.Keyboard.PressAsync("g");
        await window.Page.Keyboard.PressAsync("ArrowRight");
        var before = await Cross(window);
        for (var i = 0; i < 4; i++) await window.Page.Keyboard.PressAsync("ArrowRight");
        await Patience.Until("the crosshair went right", async () => await Cross(window) is { } now && now.X > before.X + 20 && Math.Abs(now.Y - before.Y) < 1);
        await Shoot(window, "turned");
        // It is found as it was left.
        await window.Page.ReloadAsync();
        await Patience.Until("the picture lies on its side", async () =>
            await window.Page.Locator(".stage path.line.scale").First.EvaluateAsync<bool>("e => { const b = e.getBBox(); return b.height > 3 * b.width; }"));
    }

    private static async Task<(double X, double Y)> Cross(Window window)
    {
        var at = await window.Page.Locator(".stage circle.dot.cross").EvaluateAsync<double[]>("e => [e.cx.baseVal.value, e.cy.baseVal.value]");
        return (at[0], at[1]);
    }

    [Fact]
    public async Task The_line_to_type_on_does_not_cover_the_body_it_is_about()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await Begin(window);
        foreach (var (x1, y1, x2, y2) in new[] { (0.3, 0.2, 0.45, 0.5), (0.55, 0.6, 0.8, 0.9), (0.25, 0.1, 0.75, 0.9) })
        {
            await window.Page.Keyboard.PressAsync("b");
            await Click(window, x2, y1);
            await Click(window, x1, y1);
            await Click(window, x1, y2);
            await Assertions.Expect(window.Page.Locator("#body")).ToBeFocusedAsync();
            var stage = (await window.Page.Locator("#stage").BoundingBoxAsync())!;
            var pin = (await window.Page.Locator("[data-pin]").BoundingBoxAsync())!;
            var apart = pin.X >= stage.X + (x2 * stage.Width) || pin.X + pin.Width <= stage.X + (x1 * stage.Width)
                || pin.Y >= stage.Y + (y2 * stage.Height) || pin.Y + pin.Height <= stage.Y + (y1 * stage.Height);
            Assert.True(apart, $"the line covers the body from {x1}, {y1} to {x2}, {y2}");
            await window.Page.Keyboard.PressAsync("Escape");
            await InSight(window);
            await window.Page.Keyboard.PressAsync("Escape");
        }
    }

    [Fact]
    public async Task A_known_length_across_the_whole_picture_is_typed_beside_it_and_the_page_does_not_jump()
    {
        var bench = await Bench();
        var window = await Open(bench);
        await Begin(window);
        await window.Page.Keyboard.PressAsync("s");
        await Click(window, 0.5, 0.04);
        await Click(window, 0.5, 0.96);
        await Assertions.Expect(window.Page.Locator("#scale")).ToBeFocusedAsync();
        await Assertions.Expect(window.Page.Locator("[data-pin].beside")).ToBeVisibleAsync();
        Assert.Equal(0, await window.Page.EvaluateAsync<double>("scrollY"));
        await window.Enter("#scale", "26 mm ± 0.05");
        Assert.Equal(0, await window.Page.EvaluateAsync<double>("scrollY"));
    }

    [Fact]
    public async Task The_picture_stays_in_sight_beside_a_long_list_and_comes_back_with_a_tool_on_a_narrow_window()
    {
        var demo = await Browser.Demo;
        var picture = demo.Stored("demo", session => session.View.Live<Lidoff.Evidence.Entries.FileAdded>().First(file => file.Value.Name == "brindle-main-top.png").Value.Sha256);
        foreach (var look in new[] { Look.Wide, Look.Narrow })
        {
            var window = await Open(demo, look);
            await window.Go("/dossiers/demo/see/" + picture);
            await Assertions.Expect(window.Page.Locator("#stage canvas")).ToBeVisibleAsync();
            await window.Page.EvaluateAsync("() => scrollTo(0, 900)");
            if (look.Width < 600) await window.Page.Keyboard.PressAsync("l");
            await InSight(window);
        }
    }

    private static Task InSight(Window window) => Patience.Until("the picture is in sight", () =>
        window.Page.EvaluateAsync<bool>("() => { const box = document.getElementById('stage').getBoundingClientRect(); return box.top >= 0 && box.bottom <= innerHeight; }"));

    [Fact]
    public async Task Leaders_run_beside_the_words_of_labels_and_not_through_them()
    {
        var bench = await Bench("band");
        File.WriteAllBytes(Folder["board.png"], Files.Picture().Buffer);
        await LiveBench.Command(bench.Folder, "", "add", "band", Folder["board.png"]);
        (string Spot, int X, int Y, string Role)[] spots =
        [
            ("U1", 60, 60, "radio beside the antenna"), ("U2", 120, 90, "flash memory of eight megabits"), ("U3", 40, 200, "charger"), ("C1", 200, 220, "bulk capacitor of the lamp driver"),
            ("J1", 560, 40, "flat cable to the small board"), ("L1", 420, 330, "coil"), ("AE1", 585, 380, "antenna in copper"), ("S1", 330, 120, "button"),
        ];
        await LiveBench.Command(bench.Folder, string.Join('\n', spots.Select(s => $$"""{"kind":"spot","spot":"{{s.Spot}}","picture":"board.png","point":[{{s.X}},{{s.Y}}],"role":"{{s.Role}}"}""")), "note", "band", "-");
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        await window.Page.Locator("ul.pictures a").First.ClickAsync();
        await window.Arrives("/dossiers/band/see/*");
        await Beside(window.Page);
        var present = await window.Page.RunAndWaitForPopupAsync(() => window.Page.Keyboard.PressAsync("w"));
        await Beside(present);
        await window.Page.Keyboard.PressAsync("+");
        await window.Settled();
        await Beside(window.Page);
        await Beside(present);

        // Every point of every leader against every word that is drawn.
        async Task Beside(IPage page)
        {
            await Assertions.Expect(page.Locator(".stage text.name").First).ToBeVisibleAsync();
            var through = await page.EvaluateAsync<string[]>("""
                () => {
                  const stage = document.querySelector('.stage');
                  const words = [...stage.querySelectorAll('text.name, text.words:not(.scalebar)')].map((text) => ({ text: text.textContent, box: text.getBBox() }));
                  const bad = new Set();
                  for (const leader of stage.querySelectorAll('path.leader')) {
                    for (let at = 0; at <= leader.getTotalLength(); at += 1) {
                      const { x, y } = leader.getPointAtLength(at);
                      for (const { text, box } of words) if (x > box.x + 1 && x < box.x + box.width - 1 && y > box.y + 2 && y < box.y + box.height - 2) bad.add(text);
                    }
                  }
                  return [...bad];
                }
                """);
            Assert.Empty(through);
        }
    }

    private static async Task Begin(Window window)
    {
        await window.Go("/");
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Picture());
        await window.Arrives("/dossiers/device-1/see/*");
        await Assertions.Expect(window.Page.Locator("#stage canvas")).ToBeVisibleAsync();
    }

    private static async Task Move(IKeyboard keys, string arrow, int times)
    {
        for (var i = 0; i < times; i++) await keys.PressAsync(arrow);
    }

    // What was typed is stored, and the places keep the order and the shares that the clicks had: the way from window to picture is straight.
    private static async Task Holds(LiveBench bench, params double[] shares)
    {
        await bench.Stored("device-1", "two spots", session => session.View.Live<SpotSighting>().Count == 2);
        var view = bench.Stored("device-1", session => session.View);
        var scale = Assert.Single(view.Live<ScaleSighting>()).Value.Reference;
        Assert.Equal((26.0, 0.05), (scale.LengthMm, scale.UMm));
        Assert.True(scale.From.X < scale.To.X);
        Assert.Equal(scale.From.Y, scale.To.Y, 0.5);
        var spots = view.Live<SpotSighting>().Select(spot => spot.Value).ToList();
        Assert.Contains("radio", spots[0].Role, StringComparison.Ordinal);
        Assert.Equal(("J1", "it goes to the lamp"), (spots[1].Spot, spots[1].Why));
        Assert.All(spots, spot => Assert.True(spot.At is { X: > 0 and < 600, Y: > 0 and < 400 }));
        for (var i = 0; i < shares.Length; i++) Assert.Equal(shares[i], (spots[i].At!.Value.X - scale.From.X) / (scale.To.X - scale.From.X), 0.01);
    }
}
