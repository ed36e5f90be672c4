using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Tests.Reading.Finding;

/// <summary>Lines out of maps drawn from a known truth.</summary>
public sealed class LineFinderTests
{
    private static DrawnMaps Sheet() => new(96, 96);

    private static void Near(PictureRegion expected, PictureRegion found, double px = 2)
    {
        Assert.InRange(found.Middle.DistanceTo(expected.Middle), 0, px);
        Assert.Equal(expected.Width, found.Width, 1.5 * px);
        // The truth drawn is of capitals; an outline is as high as ink, a twentieth and up to a pixel a side more.
        Assert.InRange(found.Height / expected.Height, 0.95, 1.15);
        Assert.InRange(Math.Abs(Math.IEEERemainder(found.Turn - expected.Turn, 2 * Math.PI)), 0, 0.03);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(33)]
    [InlineData(90)]
    [InlineData(137)]
    [InlineData(180)]
    [InlineData(-100)]
    [InlineData(-45)]
    public void A_line_at_any_angle_has_a_tight_outline(double degrees)
    {
        var line = Assert.Single(LineFinder.Find(Sheet().Line(190, 200, 160, 28, degrees).Draw()));
        Near(new(new(190, 200), 160, 28, degrees * Math.PI / 180), line.Outline);
        Assert.InRange(line.Agreement, 0.99, 1.0001);
        // Cells that are half sure: the axis is as good, and the vote is worth half.
        line = Assert.Single(LineFinder.Find(Sheet().Line(190, 200, 160, 28, degrees).Draw(sure: 0.5)));
        Near(new(new(190, 200), 160, 28, degrees * Math.PI / 180), line.Outline);
        Assert.Equal(0.5, line.Agreement, 0.01);
    }

    [Fact]
    public void The_axis_keeps_a_line_whose_way_is_open()
    {
        // Two halves that say the opposite way: no direction is left, the axis is.
        var line = Assert.Single(LineFinder.Find(Sheet().Line(190, 200, 100, 30, 20).Line(194, 201.4, 100, 30, -160).Draw(sure: 0.5)));
        Assert.InRange(line.Agreement, 0, 0.5);
        Assert.InRange(Math.Abs(Math.IEEERemainder(line.Outline.Turn - (20 * Math.PI / 180), Math.PI)), 0, 0.03);
    }

    [Theory]
    [InlineData(12)]
    [InlineData(20)]
    [InlineData(60)]
    public void Small_and_large_characters_are_found(double height) =>
        Near(new(new(180, 150), 5 * height, height, 0.1), Assert.Single(LineFinder.Find(Sheet().Line(180, 150, 5 * height, height, 0.1 * 180 / Math.PI).Draw())).Outline);

    [Fact]
    public void A_single_character_is_a_line()
    {
        var line = Assert.Single(LineFinder.Find(Sheet().Line(120, 120, 17, 28, 0).Draw()));
        Assert.InRange(line.Outline.Width, 12, 22);
    }

    [Fact]
    public void Pieces_with_a_small_gap_are_one_line_and_far_ones_are_not()
    {
        // A gap of half a height: one line, though the map of lines breaks off between them.
        Near(new(new(160, 100), 196, 24, 0), Assert.Single(LineFinder.Find(Sheet().Line(104, 100, 84, 24).Line(208, 100, 100, 24).Draw())).Outline, 3);
        // Three heights: two columns of a table, or two chips.
        Assert.Equal(2, LineFinder.Find(Sheet().Line(70, 100, 60, 24).Line(250, 100, 100, 24).Draw()).Count);
        // The same gap, but another height or another row.
        Assert.Equal(2, LineFinder.Find(Sheet().Line(100, 100, 80, 20).Line(200, 100, 100, 40).Draw()).Count);
        Assert.Equal(2, LineFinder.Find(Sheet().Line(100, 100, 80, 24).Line(200, 118, 100, 24).Draw()).Count);
    }

    [Fact]
    public void Dots_logos_bars_and_specks_are_not_lines()
    {
        var text = Sheet().Line(200, 200, 160, 28);
        Assert.Single(LineFinder.Find(text.Draw()));
        // A dot that both maps answer to, a logo likewise, a bar whose told height its thickness denies, a long bar that no line map answers to, a speck.
        var crowded = Sheet().Line(200, 200, 160, 28).Dot(40, 40, 14).Line(40, 40, 24, 24).Logo(320, 60, 60).Line(320, 60, 50, 40).Bar(190, 340, 300, 3, 60).Bar(190, 290, 200, 10, 25).Line(40, 340, 2, 30).Draw();
        Near(new(new(200, 200), 160, 28, 0), Assert.Single(LineFinder.Find(crowded)).Outline);
    }

    [Fact]
    public void Cells_without_one_direction_are_no_line() =>
        // Two lines that cross: along neither of them lies the axis of most cells.
        Assert.Empty(LineFinder.Find(Sheet().Line(190, 200, 90, 40, 0).Line(190, 200, 90, 40, 90).Draw()));

    [Fact]
    public void Nothing_is_found_in_an_empty_sheet_and_nothing_beyond_the_valid_part()
    {
        Assert.Empty(LineFinder.Find(Sheet().Draw()));
        Assert.Empty(LineFinder.Find(new DrawnMaps(96, 96, 96, 48).Line(190, 300, 120, 24).Draw()));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(180)]
    [InlineData(90)]
    [InlineData(35)]
    public void Lines_stand_in_reading_order_along_the_common_direction(double degrees)
    {
        // Three lines 50 px apart below one another as read, the last one in two columns.
        var turn = degrees * Math.PI / 180;
        (double X, double Y) At(double along, double down) => (190 + (along * Math.Cos(turn)) - (down * Math.Sin(turn)), 190 + (along * Math.Sin(turn)) + (down * Math.Cos(turn)));
        var places = new (double Along, double Down, double Length)[] { (0, -50, 150), (-10, 0, 120), (-60, 50, 50), (60, 50, 60) };
        var maps = Sheet();
        foreach (var (along, down, length) in places.Reverse()) maps.Line(At(along, down).X, At(along, down).Y, length, 24, degrees);
        var layout = MarkLayout.Of(LineFinder.Find(maps.Draw()));
        Assert.Equal(4, layout.Lines.Count);
        for (var i = 0; i < 4; i++) Assert.InRange(layout.Lines[i].Middle.DistanceTo(new(At(places[i].Along, places[i].Down).X, At(places[i].Along, places[i].Down).Y)), 0, 3);
        Assert.InRange(Math.Abs(Math.IEEERemainder(layout.Turn - turn, 2 * Math.PI)), 0, 0.03);
        Assert.InRange(layout.Vote, 0.98, 1.0001);
        // The other way up: the order turns round with it.
        Assert.InRange(layout.TurnedRound().Lines[0].Middle.DistanceTo(layout.Lines[3].Middle), 0, 1e-9);
    }

    [Fact]
    public void A_slanting_line_beside_the_mark_does_not_turn_it()
    {
        var layout = MarkLayout.Of(LineFinder.Find(Sheet().Line(190, 100, 150, 24, 10).Line(182, 145, 150, 24, 10).Line(150, 280, 120, 24, 40).Draw()));
        Assert.Equal(10 * Math.PI / 180, layout.Turn, 0.03);
    }

    [Fact]
    public void A_line_that_runs_against_the_others_is_outvoted_and_the_vote_says_how_clear_it_is()
    {
        var layout = MarkLayout.Of(LineFinder.Find(Sheet().Line(190, 100, 150, 24, 180).Line(190, 150, 150, 24, 180).Line(190, 200, 100, 24, 0).Draw()));
        Assert.All(layout.Lines, line => Assert.InRange(Math.Abs(line.Turn), 3.1, 3.2));
        // 150 + 150 against 100 of 400.
        Assert.Equal(0.5, layout.Vote, 0.05);
        Assert.InRange(layout.Lines[0].Middle.Y, 195, 205);
    }

    [Fact]
    public void Upright_keeps_a_slight_tilt_and_turns_nothing_upside_down()
    {
        var layout = MarkLayout.Of(LineFinder.Find(Sheet().Line(190, 100, 150, 24, 176).Line(190, 150, 150, 24, -4).Draw()), upright: true);
        Assert.All(layout.Lines, line => Assert.Equal(-4 * Math.PI / 180, line.Turn, 0.03));
        Assert.InRange(layout.Lines[0].Middle.Y, 95, 105);
    }

    [Fact]
    public void A_body_around_a_click_and_its_dot_are_found()
    {
        var body = new PictureRegion(new(200, 180), 150, 110, 0.3);
        var maps = Sheet().Body(body).Body(PictureRegion.Box(10, 300, 60, 60)).Dot(150, 140, 7).Draw();
        var found = BodyFinder.Find(maps, new(210, 190), out var cut);
        Assert.False(cut);
        Near(body, found!.Value, 3);
        Assert.Equal((150, 140), (BodyFinder.Dot(maps)!.At.X, BodyFinder.Dot(maps)!.At.Y, 0) is var (x, y, _) ? (Math.Round(x), Math.Round(y)) : default);
        Assert.Null(BodyFinder.Find(maps, new(350, 350), out _));
        // One that runs out of the sheet is said to be cut.
        Assert.Null(BodyFinder.Find(Sheet().Body(PictureRegion.Box(-50, 100, 200, 150)).Draw(), new(60, 150), out cut));
        Assert.True(cut);
        Assert.Null(BodyFinder.Dot(Sheet().Draw()));
    }
}
