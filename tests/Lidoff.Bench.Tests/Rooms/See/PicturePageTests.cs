using System.Globalization;
using System.Text.RegularExpressions;
using Bunit;
using Lidoff.Bench.Rooms.See;
using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Pictures;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Rendering;
using Microsoft.Extensions.DependencyInjection;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class PicturePageTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private static readonly Lazy<byte[]> Board = new(() => Png(Brindle.LampTop()));

    private static readonly Lazy<byte[]> Other = new(() => Png(Brindle.LampTop(seed: 9) with { Width = 400, Height = 300 }));

    [Fact]
    public void A_fresh_picture_asks_for_its_scale_first_and_then_for_what_is_in_it()
    {
        var page = Page(out _);
        Assert.Contains("First the scale: click both ends of a length you know, or skip it with P.", page.Markup, StringComparison.Ordinal);
        Put(page, "scale", 10, 20, 110, 20);
        page.WaitForElement("#scale", Patience).Input("5 mm ± 0.02");
        On(page, "form:has(#scale)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("20 px/mm", page.Markup, StringComparison.Ordinal), Patience);
        // By hand: both clicks, each within 1 px, of 100 px are 1.41 %; the length's own 0.4 % beside that makes 1.47 %. Away from it a slant that one length cannot show adds to that; how much is held against cameras of known pose in the tests of measuring.
        var chip = Regex.Match(page.Find(".tools-row .chip").TextContent, "^20 px/mm ± ([0-9.]+) % along the known length, ± ([0-9.]+) % across the middle$");
        Assert.Equal(1.47, double.Parse(chip.Groups[1].Value, CultureInfo.InvariantCulture), 0.02);
        Assert.True(double.Parse(chip.Groups[2].Value, CultureInfo.InvariantCulture) > 1.47);
        // 100 px for 5 mm.
        var scale = Assert.Single(Stored<ScaleSighting>());
        Assert.Equal((5, 0.02, new PicturePoint(110, 20)), (scale.Reference.LengthMm, scale.Reference.UMm, scale.Reference.To));
        Assert.Contains("Click what you want to name. Arrow keys move a crosshair, Enter sets the point.", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_point_and_words_make_a_spot_that_the_drawer_then_explains()
    {
        var page = Page(out var sha256);
        Put(page, "point", 40, 50);
        var line = page.WaitForElement("form.entry input", Patience);
        line.Input("chip antenna because it is ceramic");
        Assert.Equal("AE1", page.Find(".reads .mark bdi").TextContent);
        On(page, "form.entry", e => e.Submit());
        page.WaitForElement(".pointed .on", Patience);
        Assert.Equal(new SpotSighting("AE1", "chip antenna", "it is ceramic", "antenna", sha256, new(40, 50), null), Assert.Single(Stored<SpotSighting>()));
        Assert.Equal("part:AE1", Services.GetRequiredService<Selection>().Reference);
    }

    [Fact]
    public void Two_corners_put_a_box_in_the_place_of_a_point_and_what_was_said_of_the_spot_stays()
    {
        var page = Page(out var sha256);
        Bench.Set("d", "", $$"""{"kind":"spot","spot":"U1","role":"radio","why":"its crystal","class":"chip","picture":"{{sha256}}","point":[40,50]}""");
        page.WaitForElement(".pointed .pick", Patience);
        // From the right foot to the left top; the one spot in it is meant.
        Put(page, "box", 60, 62, 30, 44);
        Assert.Equal("U1", page.WaitForElement("#box", Patience).GetAttribute("placeholder"));
        On(page, "form:has(#box)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(new SpotSighting("U1", "radio", "its crystal", "chip", sha256, null, new(30, 44, 30, 18)), Assert.Single(Stored<SpotSighting>())), Patience);
        // What was stored is selected after that.
        page.WaitForAssertion(() => Assert.Equal("part:U1", Services.GetRequiredService<Selection>().Reference), Patience);
        var sides = StageOverlay.Of(Bench.View("d", dossier => PictureView.Of(dossier, sha256))!, "").Lines.Where(line => line.Sort == "box").ToList();
        Assert.Equal([(30.0, 44.0), (60.0, 44.0), (60.0, 62.0), (30.0, 62.0)], sides.Select(side => (side.X1, side.Y1)));
        // A box of no height is none; words alone make a new spot.
        Put(page, "box", 10, 20, 90, 20);
        page.WaitForElement("#box", Patience);
        On(page, "form:has(#box)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("These two corners lie in one row or column", page.Markup, StringComparison.Ordinal), Patience);
        Put(page, "box", 100, 20, 120, 40);
        On(page, "#box", e => e.Input("Y crystal 32 MHz"));
        On(page, "form:has(#box)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(new SpotSighting("Y1", "crystal 32 MHz", "", "crystal", sha256, null, new(100, 20, 20, 20)), Stored<SpotSighting>()[^1]), Patience);
    }

    [Fact]
    public void Enter_before_the_first_word_is_asked_about_and_a_second_one_means_it()
    {
        var page = Page(out _);
        Put(page, "point", 40, 50);
        page.WaitForElement("form.entry input", Patience);
        On(page, "form.entry", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(SeeSentences.BareSpot("U1").Say, page.Find(".fault").TextContent), Patience);
        Assert.Empty(Stored<SpotSighting>());
        page.Find("form.entry input").Input("radio");
        Assert.Empty(page.FindAll(".fault"));
        page.Find("form.entry input").Input("");
        On(page, "form.entry", e => e.Submit());
        page.WaitForElement(".fault", Patience);
        On(page, "form.entry", e => e.Submit());
        page.WaitForElement(".pointed .on", Patience);
        Assert.Equal(("U1", ""), (Assert.Single(Stored<SpotSighting>()).Spot, Stored<SpotSighting>()[0].Role));
    }

    [Fact]
    public async Task A_point_set_from_afar_is_no_finer_than_the_pixel_of_the_screen()
    {
        var page = Page(out _, """{"kind":"scale","picture":"SHA","from":[0,0],"to":[100,0],"length_mm":5,"click_u_px":0}""");
        Put(page, "length");
        await page.InvokeAsync(() => page.FindComponent<PictureStage>().Instance.Points("length", [0, 0, 100, 0], 6));
        // Both ends to 6 px: 6 · √2 = 8.49 px of a length of 100 px, at 20 px/mm 0.42 mm.
        page.WaitForAssertion(() => Assert.Equal("5.00 ± 0.42 mm", page.Find(".found .n").TextContent), Patience);
        page.Find("#length").Input("U1 width");
        On(page, "form:has(#length)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(6, Assert.Single(Stored<LengthSighting>()).InPicture!.ClickPx), Patience);
        // However near one looks, an edge is a pixel wide.
        await page.InvokeAsync(() => page.FindComponent<PictureStage>().Instance.Points("length", [0, 0, 100, 0], 0.05));
        page.WaitForAssertion(() => Assert.Equal("5.000 ± 0.071 mm", page.Find(".found .n").TextContent), Patience);
    }

    [Fact]
    public void A_spot_twice_in_one_picture_is_refused_and_what_was_typed_stays()
    {
        var page = Page(out var sha256, """{"kind":"spot","spot":"U1","picture":"SHA","point":[10,10]}""");
        Put(page, "point", 40, 50);
        page.WaitForElement("form.entry input", Patience).Input("U1 again");
        On(page, "form.entry", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("U1 is already pointed at in this picture. Move it with M, or take the next free one, U2.", page.Find(".fault").TextContent, StringComparison.Ordinal), Patience);
        Assert.Equal("U1 again", page.Find("form.entry input").GetAttribute("value"));
        Assert.Equal(sha256, Assert.Single(Stored<SpotSighting>()).Picture);
    }

    [Fact]
    public void A_body_says_what_its_sides_come_to_before_it_is_stored()
    {
        var page = Page(out _, """{"kind":"scale","picture":"SHA","from":[0,0],"to":[100,0],"length_mm":5}""");
        Put(page, "body", 10, 10, 10, 50, 90, 50);
        // 40 px at 20 px/mm are 2 mm, 80 px are 4 mm.
        page.WaitForAssertion(() => Assert.Equal([2, 4], page.FindAll(".found .n").Select(side => Math.Round(double.Parse(side.TextContent.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 1))), Patience);
        Assert.All(page.FindAll(".found .n"), side => Assert.Matches(@"^\d\.\d+ ± 0\.\d+ mm$", side.TextContent));
        Assert.Empty(Stored<LengthSighting>());
    }

    [Fact]
    public void Places_say_what_they_would_make_and_are_stored_as_it()
    {
        var page = Page(out _, """{"kind":"scale","picture":"SHA","from":[0,0],"to":[100,0],"length_mm":5}""");
        On(page, "[data-key=n]", e => e.Click());
        Put(page, "shape", 20, 20, 60, 20);
        page.WaitForAssertion(() => Assert.Contains("three places make a shape", page.Markup, StringComparison.Ordinal), Patience);
        Put(page, "shape", 20, 20, 60, 20, 60, 60, 20, 60);
        page.WaitForAssertion(() => Assert.Contains("mm²", page.Find(".found").TextContent, StringComparison.Ordinal), Patience);
        Assert.DoesNotContain("angle", page.Find(".found").TextContent, StringComparison.Ordinal);
        page.WaitForElement("#shape", Patience).Input("BT1 area");
        On(page, "form:has(#shape)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains("mm²", page.Find(".measured").TextContent, StringComparison.Ordinal), Patience);
        var stored = Assert.Single(Stored<ClickedShape>());
        Assert.Equal(("BT1", "area", 4), (stored.Spot, stored.What, stored.Points.Count));
    }

    // A hand that sets points from afar is off by 8 px where the hole itself is 5 px wide: nothing is known of it, and not for want of a known length.
    [Fact]
    public void Places_that_make_nothing_for_certain_say_so_and_do_not_blame_the_scale()
    {
        var page = Page(out _, """{"kind":"scale","picture":"SHA","from":[0,0],"to":[100,0],"length_mm":5}""");
        On(page, "[data-key=n]", e => e.Click());
        page.WaitForAssertion(() => Assert.Equal("shape", page.FindComponent<PictureStage>().Instance.Tool), Patience);
        page.InvokeAsync(() => page.FindComponent<PictureStage>().Instance.Points("shape", [20, 20, 25, 20, 22, 23], 8));
        page.WaitForAssertion(() => Assert.Contains(SeeSentences.ShapeUnsure, page.Markup, StringComparison.Ordinal), Patience);
        Assert.DoesNotContain(SeeSentences.NoScaleYet, page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_scale_a_body_says_that_lengths_come_later()
    {
        var page = Page(out _);
        Put(page, "body", 10, 10, 10, 50, 90, 50);
        page.WaitForAssertion(() => Assert.Contains(SeeSentences.NoScaleYet, page.Find("[data-pin]").TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task While_tiles_are_made_the_page_says_so_and_how_far_it_is()
    {
        var page = Page(out var sha256);
        Assert.Empty(page.FindAll(".making"));
        var (desk, go) = (Services.GetRequiredService<JobDesk>(), new TaskCompletionSource());
        var job = desk.Start<string>(Lidoff.Bench.Data.WorkspaceTiles.JobName(sha256), async report =>
        {
            report.Say(40, 100, "");
            await go.Task;
            return "";
        });
        page.WaitForAssertion(() => Assert.Contains("its tiles are being made", page.Find(".making").TextContent, StringComparison.Ordinal), Patience);
        page.WaitForAssertion(() => Assert.Equal("0.4", page.Find(".making progress").GetAttribute("value")), Patience);
        On(page, ".making button", e => e.Click());
        Assert.True(job.Stop.IsCancellationRequested);
        go.SetResult();
        await job.Result;
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".making")), Patience);
    }

    [Fact]
    public void Who_looks_on_gets_a_scale_bar_with_its_doubt_where_the_eye_could_tell()
    {
        // 800 px along the middle, where a bar lies, are 40 mm, so 20 px are 1 mm. With 2 mm of doubt that is 5 %, and the clicks add little beside it.
        Page(out var sha256, """{"kind":"scale","picture":"SHA","from":[400,600],"to":[1200,600],"length_mm":40,"u_mm":2}""");
        var view = Bench.View("d", dossier => PictureView.Of(dossier, sha256))!;
        var (own, shown) = (StageOverlay.Of(view, ""), StageOverlay.Of(view, "", withLines: false));
        Assert.Equal((null, ""), (own.PxPerMm, own.Doubt));
        Assert.InRange(shown.PxPerMm!.Value, 19.99, 20.01);
        Assert.Matches(@"^ ± 5(\.\d+)? %$", shown.Doubt);
        Assert.Null(StageOverlay.Of(Bench.View("d", dossier => PictureView.Of(dossier, new string('b', 64)))!, "", withLines: false).PxPerMm);
    }

    [Fact]
    public void Edges_near_a_clicked_body_are_drawn_over_it_by_a_key_and_taken_over_by_Enter_with_the_clicks_beside_them()
    {
        var page = Page(out _, """{"kind":"scale","picture":"SHA","from":[0,0],"to":[100,0],"length_mm":5}""");
        var corners = SceneTruth.Of(Brindle.LampTop()).Outline;
        // Clicked 2 px outside of the board's own outline, whose place is known.
        PicturePoint[] clicked = [new(corners[0].X - 2, corners[0].Y - 2), new(corners[1].X + 2, corners[1].Y - 2), new(corners[2].X + 2, corners[2].Y + 2)];
        Put(page, "body", [.. clicked.SelectMany(point => new[] { point.X, point.Y })]);
        page.WaitForElement("#body", Patience);
        Assert.Empty(page.FindAll(".edges .n"));
        On(page, ".edges button", e => e.Click());
        page.WaitForAssertion(() => Assert.Matches("^the first side (1.[7-9]|2.[0-3]) ± 0.[0-3] px inwards · the second side", page.Find(".edges small[role=status]").TextContent), Patience);
        // What they come to is reckoned after they are drawn.
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".edges .n").Count), Patience);
        var drawn = page.FindComponent<PictureStage>().Instance.Overlay.Lines.Where(line => line.Sort == "edge").ToList();
        Assert.Equal(4, drawn.Count);
        Assert.InRange(new PicturePoint(drawn[0].X1, drawn[0].Y1).DistanceTo(corners[0]), 0, 0.4);
        page.Find("#body").Input("B1");
        On(page, "form:has(#body)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(2, Stored<LengthSighting>().Count), Patience);
        var stored = Stored<LengthSighting>()[0].InPicture!;
        Assert.Equal(("edges 2", 3), (stored.EndsBy, stored.Clicked.Count));
        Assert.Equal(clicked[2], stored.Clicked[2]);
        Assert.InRange(stored.EndsUPx!.Value.From, 0.03, 0.5);
        Assert.Equal(Math.Max(corners[0].DistanceTo(corners[1]), corners[1].DistanceTo(corners[2])), stored.From.DistanceTo(stored.To), 0.5);
        // The next one is looked at without being asked for again, and the key leaves it as clicked.
        Put(page, "length", 20, 20, 60, 21);
        page.WaitForElement("#length", Patience);
        page.WaitForAssertion(() => Assert.Equal("true", page.Find(".edges button").GetAttribute("aria-pressed")), Patience);
        page.WaitForAssertion(() => Assert.Contains("stays as clicked", page.Find(".edges .doubt").TextContent, StringComparison.Ordinal), Patience);
        On(page, ".edges button", e => e.Click());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".edges .doubt")), Patience);
    }

    [Fact]
    public void A_body_is_two_sides_by_the_names_that_naming_looks_for()
    {
        var page = Page(out _, """{"kind":"scale","picture":"SHA","from":[0,0],"to":[100,0],"length_mm":5}""");
        Put(page, "body", 10, 10, 10, 50, 90, 50);
        page.WaitForElement("#body", Patience).Input("U1, height 0.8 mm");
        On(page, "form:has(#body)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".measured li").Count - 1), Patience);
        Assert.Equal([("short side", 0.8), ("long side", 0.8)], Stored<LengthSighting>().Select(length => (length.What, length.InPicture!.HeightMm)));
        // 80 px at 20 px/mm are 4 mm, 40 px are 2 mm, in the board's plane; the height asks for the camera's distance, which is said.
        // A pin-hole shows a plane 0.8 mm nearer larger by 0.8 / distance: 4 mm at most, and not a tenth less from any usual distance.
        foreach (var (what, mm) in new[] { ("long side", 4.0), ("short side", 2.0) }) Assert.InRange(Bench.View("d", dossier => dossier.Model.Length("U1", what).Readings.Select(reading => reading.Mm).ToList())![0], 0.9 * mm, mm);
        Assert.Contains("other-plane", string.Join(' ', Bench.View("d", dossier => dossier.Model.Length("U1", "long side").Readings[0].Warnings.Select(warning => warning.Code).ToList())!), StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_put_right_or_moved_takes_the_place_of_what_was_there()
    {
        var page = Page(out _, """{"kind":"spot","spot":"U1","role":"radio","specimen":"A","picture":"SHA","point":[10,10]}""", """{"kind":"scale","picture":"SHA","from":[0,0],"to":[100,0],"length_mm":5}""");
        var stage = page.FindComponent<PictureStage>().Instance;
        var handle = stage.Overlay.Spots[0].Id;
        await page.InvokeAsync(() => stage.Moved(handle, 30, 31));
        page.WaitForAssertion(() => Assert.Equal(new PicturePoint(30, 31), Assert.Single(Stored<SpotSighting>()).At), Patience);
        Assert.Equal("radio", Stored<SpotSighting>()[0].Role);
        var end = stage.Overlay.Lines[0].Id + ":to";
        await page.InvokeAsync(() => stage.Moved(end, 200, 0));
        page.WaitForAssertion(() => Assert.Equal(new PicturePoint(200, 0), Assert.Single(Stored<ScaleSighting>()).Reference.To), Patience);
        await page.InvokeAsync(() => page.Find(".pick").Click());
        page.WaitForElement("button[aria-label^='Why U1']", Patience).Click();
        page.WaitForElement("form.inplace input", Patience).Input("its crystal is near");
        On(page, "form.inplace", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal("its crystal is near", Assert.Single(Stored<SpotSighting>()).Why), Patience);
    }

    [Fact]
    public async Task Landmarks_lay_two_pictures_on_a_board_and_spots_are_carried_over()
    {
        // The other picture shows the same at twice the scale: from 40 px at the left and 30 px above, by hand.
        string[] there = [.. new[] { ("H1", 10, 10), ("H2", 90, 12), ("H3", 88, 70), ("H4", 12, 68) }.Select(each => $$"""{"kind":"landmark","landmark":"{{each.Item1}}","specimen":"A","picture":"OTHER","point":[{{40 + (2 * each.Item2)}},{{30 + (2 * each.Item3)}}]}""")];
        var page = Page(out var sha256, [.. there,
            """{"kind":"picture","file":"SHA","specimen":"A","side":"top"}""", """{"kind":"picture","file":"OTHER","specimen":"A","side":"top"}""",
            """{"kind":"scale","picture":"OTHER","from":[40,30],"to":[240,30],"length_mm":10}""", """{"kind":"spot","spot":"U1","specimen":"A","picture":"OTHER","point":[140,110]}"""]);
        foreach (var (name, x, y) in new[] { ("H1", 10, 10), ("H2", 90, 12), ("H3", 88, 70) }) Landmark(page, name, x, y);
        Put(page, "landmark", 12, 68);
        // Names of the other picture that this one does not show yet are offered.
        page.WaitForAssertion(() => Assert.Equal(["H4"], page.FindAll("#landmarks option").Select(option => option.GetAttribute("value"))), Patience);
        page.Find("#landmark").Input("H3");
        On(page, "form:has(#landmark)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal("H3 is already pointed at in this picture. Move it with M, or give this one another name.", page.Find(".fault").TextContent), Patience);
        page.Find("#landmark").Input("H4");
        On(page, "form:has(#landmark)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal(4, page.FindAll(".landmarks li").Count), Patience);
        Assert.Equal(new LandmarkSighting("H4", sha256, new(12, 68), 1.5, null, null, 0.03), Stored<LandmarkSighting>()[^1]);
        Assert.Contains("Lies on its board with 1 other picture, by 4 landmarks they share.", page.Markup, StringComparison.Ordinal);
        Assert.All(page.FindAll(".landmarks .n"), rest => Assert.Equal("0 µm", rest.TextContent));
        // 200 px for 10 mm there are 10 px/mm here.
        Assert.Contains("10 px/mm ±", page.Markup, StringComparison.Ordinal);
        Assert.Contains("by the board", page.Markup, StringComparison.Ordinal);

        var stage = page.FindComponent<PictureStage>().Instance;
        var ghost = Assert.Single(stage.Overlay.Marks, mark => mark.Sort == "ghost");
        Assert.Equal(("U1?", 50.0, 40.0), (ghost.Name, Math.Round(ghost.X, 3), Math.Round(ghost.Y, 3)));
        Assert.InRange(ghost.Reach, 1, 12);
        Assert.Contains("carried over from other.png", page.Find(".ghosts").TextContent, StringComparison.Ordinal);

        // A length clicked here comes out by the board.
        Put(page, "length", 20, 20, 70, 20);
        page.WaitForAssertion(() => Assert.Matches(@"(4\.9|5(\.0)?)[0-9]* ± ", page.Find(".found").TextContent), Patience);

        // One moved far off is left out and named.
        var handle = Assert.Single(stage.Overlay.Marks, mark => mark.Name == "H4").Id;
        await page.InvokeAsync(() => stage.Moved(handle, 60, 68));
        page.WaitForAssertion(() => Assert.Equal(new PicturePoint(60, 68), Stored<LandmarkSighting>().Single(each => each.Landmark == "H4" && each.Picture == sha256).At), Patience);
        page.WaitForAssertion(() => Assert.Contains("“board.png” was left out: its 4 landmarks do not fit this board", page.Find(".doubt").ParentElement!.TextContent, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public void Tags_of_a_picture_are_small_fields_that_replace_each_other()
    {
        var page = Page(out _);
        On(page, "select[aria-label='Side it shows']", e => e.Change("bottom"));
        page.WaitForAssertion(() => Assert.Equal(PictureSide.Bottom, Assert.Single(Stored<PictureSighting>()).Side), Patience);
        page.WaitForAssertion(() => Assert.Equal("bottom", page.FindComponent<TagPanel>().Instance.View.Tags.Side), Patience);
        On(page, "button[aria-label^='Zoom tag']", e => e.Click());
        page.WaitForElement("form.inplace input", Patience).Input("2x");
        On(page, "form.inplace", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal((PictureSide.Bottom, "2x"), (Assert.Single(Stored<PictureSighting>()).Side, Stored<PictureSighting>()[0].Zoom)), Patience);
    }

    [Fact]
    public void A_mark_with_alternatives_asks_how_they_are_weighed_before_it_is_stored()
    {
        var page = Page(out _, """{"kind":"spot","spot":"U1","picture":"SHA","point":[10,10]}""");
        page.InvokeAsync(() => page.Find(".pick").Click());
        page.WaitForElement("#mark-U1", Patience).Input("N52");
        Assert.Empty(page.FindAll(".lattice .tick"));
        page.Find("#mark-U1").Input("N5|S2");
        page.WaitForElement(".lattice .tick input", Patience).Change(true);
        // What the script draws the places from.
        Assert.Equal(("N5|S2", "on"), (page.Find("[data-lattice]").GetAttribute("data-text"), page.Find("[data-lattice]").GetAttribute("data-by-order")));
        On(page, "form:has(#mark-U1)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Equal("N52", Assert.Single(Stored<MarkSighting>()).Text), Patience);
    }

    [Fact]
    public void The_presenter_follows_what_is_looked_at()
    {
        var page = Page(out var sha256, """{"kind":"spot","spot":"U1","role":"radio","picture":"SHA","point":[10,10]}""");
        var shown = Render<PresentPage>(p => p.Add(o => o.Name, "d"));
        shown.WaitForElement(".stage", Patience);
        Assert.Empty(shown.FindAll("nav, button, a, input"));
        page.InvokeAsync(() => page.FindComponent<PictureStage>().Instance.Viewed(20, 30, 40));
        shown.WaitForAssertion(() => Assert.Equal((20, 30, 40), shown.FindComponent<PictureStage>().Instance.LookAt), Patience);
        Assert.Equal(sha256, Services.GetRequiredService<Presenter>().Of("d")!.Sha256);
    }

    [Fact]
    public void Hostile_text_is_text()
    {
        var page = Page(out _,
            """{"kind":"spot","spot":"U<9>","role":"</li><script>alert(1)</script> \u202E","why":"<i>","class":"<b>","picture":"SHA","point":[10,10]}""",
            """{"kind":"length","spot":"<u>","what":"<s>","picture":"SHA","from":[0,0],"to":[9,9]}""",
            """{"kind":"picture","file":"SHA","zoom":"<em>","light":"<q>"}""");
        page.InvokeAsync(() => page.Find(".pick").Click());
        page.WaitForElement(".pointed .on", Patience);
        Assert.Contains("alert(1)", page.Markup, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("script, i, em, q, s, u"));
        Assert.DoesNotContain("\u202E", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_picture_of_another_dossier_is_not_shown()
    {
        Bench.Set("d", "");
        var page = Render<PicturePage>(p => p.Add(o => o.Name, "d").Add(o => o.Sha256, new string('a', 64)));
        page.WaitForAssertion(() => Assert.Contains("There is no such picture in this dossier.", page.Markup, StringComparison.Ordinal), Patience);
    }

    private static byte[] Png(Scene scene)
    {
        using var png = new MemoryStream();
        SceneRenderer.Render(scene).WritePng(png);
        return png.ToArray();
    }

    private static void Put(IRenderedComponent<PicturePage> page, string tool, params double[] points)
    {
        page.InvokeAsync(() => page.FindAll(".tools-row button").Single(button => button.TextContent.Equals(tool, StringComparison.OrdinalIgnoreCase)).Click());
        page.WaitForAssertion(() => Assert.Equal(tool, page.FindComponent<PictureStage>().Instance.Tool), Patience);
        page.InvokeAsync(() => page.FindComponent<PictureStage>().Instance.Points(tool, points));
    }

    private void Landmark(IRenderedComponent<PicturePage> page, string name, int x, int y)
    {
        Put(page, "landmark", x, y);
        page.WaitForElement("#landmark", Patience).Input(name);
        On(page, "form:has(#landmark)", e => e.Submit());
        page.WaitForAssertion(() => Assert.Contains(Stored<LandmarkSighting>(), each => each.Landmark == name && each.At == new PicturePoint(x, y)), Patience);
        page.WaitForAssertion(() => Assert.Empty(page.FindAll("#landmark")), Patience);
    }

    [Fact]
    public void The_scale_of_the_same_camera_and_zoom_is_offered_taken_by_a_key_and_counts_as_the_same_line()
    {
        // As large as the board's picture, another one: 100 px are 5 mm there.
        string[] lines = ["""{"kind":"picture","file":"SHA","zoom":"2x","camera":"cam"}""", """{"kind":"picture","file":"TWIN","zoom":"2x","camera":"cam"}""", """{"kind":"scale","picture":"TWIN","from":[10,20],"to":[110,20],"length_mm":5}""",
            """{"kind":"length","spot":"U1","what":"width","picture":"TWIN","from":[0,0],"to":[100,0]}""", """{"kind":"length","spot":"U1","what":"width","picture":"SHA","from":[0,0],"to":[101,0]}"""];
        var twin = Twin("<b>twin</b>.png");
        var page = Page(out var sha256, [.. lines.Select(line => line.Replace("TWIN", twin, StringComparison.Ordinal))]);
        Assert.Empty(Bench.View("d", dossier => dossier.Model.Scale(sha256).References.ToList())!);
        page.WaitForAssertion(() => Assert.Contains("The same camera and zoom as <b>twin</b>.png: 20 px/mm", page.Find(".offer").TextContent, StringComparison.Ordinal), Patience);
        On(page, ".offer button", e => e.Click());
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".offer")), Patience);
        var taken = Stored<ScaleSighting>()[^1];
        Assert.Equal((sha256, twin), (taken.Picture, taken.CarriedFrom));
        Assert.Equal(5, taken.Reference.LengthMm, 0.001);
        // A zoom ring put back is good to a hundredth at best.
        Assert.InRange(taken.Reference.UMm / taken.Reference.LengthMm, 0.01, 0.03);
        page.WaitForAssertion(() => Assert.Contains("Carried over", page.Find(".measured").TextContent, StringComparison.Ordinal), Patience);
        // Two readings by one scale are one line of evidence, which is E2; two independent ones would be E3.
        var readings = Bench.View("d", dossier => dossier.Model.Length("U1", "width").Readings.ToList())!;
        Assert.Equal(["", twin], readings.Select(reading => reading.ScaleOf).Order(StringComparer.Ordinal));
        Assert.Equal(Evidence.Grading.Grade.E2, Weighing.Modelling.CombinedLength.Of(readings).Grade);
    }

    [Theory]
    [InlineData("""{"kind":"picture","file":"TWIN","zoom":"4x","camera":"cam"}""")]
    [InlineData("""{"kind":"picture","file":"TWIN","zoom":"2x","camera":"phone"}""")]
    [InlineData("""{"kind":"picture","file":"TWIN","zoom":"2x"}""")]
    public void Another_zoom_or_camera_offers_nothing(string tags)
    {
        var twin = Twin("twin.png");
        var page = Page(out _, """{"kind":"picture","file":"SHA","zoom":"2x","camera":"cam"}""", tags.Replace("TWIN", twin, StringComparison.Ordinal), $$"""{"kind":"scale","picture":"{{twin}}","from":[10,20],"to":[110,20],"length_mm":5}""");
        Assert.Empty(page.FindAll(".offer"));
    }

    [Fact]
    public void A_carried_scale_that_the_board_contradicts_is_said()
    {
        var twin = Twin("twin.png");
        // The ring was turned: what lies 60 px apart there lies 69 px apart here, and the places of the holes are known in mm at 20 px/mm there.
        (string Name, double X, double Y)[] holes = [("H1", 10, 10), ("H2", 70, 12), ("H3", 68, 50), ("H4", 12, 48), ("H5", 40, 30)];
        var page = Page(out var sha256, [.. holes.SelectMany(hole => new[] { (twin, 1.0), ("SHA", 1.15) }.Select(each => FormattableString.Invariant($$"""{"kind":"landmark","landmark":"{{hole.Name}}","specimen":"A","picture":"{{each.Item1}}","point":[{{hole.X * each.Item2}},{{hole.Y * each.Item2}}]}"""))),
            .. holes.Select(hole => FormattableString.Invariant($$"""{"kind":"landmark","landmark":"{{hole.Name}}","mm":[{{hole.X / 20}},{{hole.Y / 20}}],"u_mm":0.005}""")),
            """{"kind":"picture","file":"SHA","specimen":"A","side":"top","zoom":"2x","camera":"cam"}""", $$"""{"kind":"picture","file":"{{twin}}","specimen":"A","side":"top","zoom":"2x","camera":"cam"}""",
            $$"""{"kind":"scale","picture":"{{twin}}","specimen":"A","from":[0,20],"to":[100,20],"length_mm":5,"u_mm":0.005}"""]);
        page.WaitForElement(".offer button", Patience);
        On(page, ".offer button", e => e.Click());
        page.WaitForAssertion(() => Assert.NotEmpty(Bench.View("d", dossier => dossier.Model.Board(sha256)!.Laid.Picture(sha256)!.Warnings.Where(warning => warning.Code == "reference-disagrees").ToList())!), Patience);
        page.WaitForAssertion(() => Assert.Contains("board.png", string.Join(' ', page.FindAll(".doubt").Select(each => each.TextContent)), StringComparison.Ordinal), Patience);
    }

    // Another picture as large as the board's.
    private string Twin(string name)
    {
        Bench.Set("d", "");
        using var body = new MemoryStream(Png(Brindle.LampTop(seed: 9)));
        return Bench.Add("d", name, body, "drop", CancellationToken.None).GetAwaiter().GetResult().Value.Sha256;
    }

    private IRenderedComponent<PicturePage> Page(out string sha256, params string[] lines)
    {
        Bench.Set("d", "");
        using var body = new MemoryStream(Board.Value);
        var hash = Bench.Add("d", "board.png", body, "drop", CancellationToken.None).GetAwaiter().GetResult().Value.Sha256;
        sha256 = hash;
        if (lines.Any(line => line.Contains("OTHER", StringComparison.Ordinal)))
        {
            using var other = new MemoryStream(Other.Value);
            var its = Bench.Add("d", "other.png", other, "drop", CancellationToken.None).GetAwaiter().GetResult().Value.Sha256;
            lines = [.. lines.Select(line => line.Replace("OTHER", its, StringComparison.Ordinal))];
        }

        Bench.Set("d", "", [.. lines.Select(line => line.Replace("SHA", hash, StringComparison.Ordinal))]);
        var page = Render<PicturePage>(p => p.Add(o => o.Name, "d").Add(o => o.Sha256, hash));
        page.WaitForElement(".stage", Patience);
        return page;
    }
}
