using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Tests.Reading.Engine;

/// <summary>The whole way from a picture to readings, over networks that know the truth of a painted scene.</summary>
public sealed class MarkReaderTests
{
    private static readonly PictureRegion All = PictureRegion.Box(0, 0, 600, 500);

    /// <summary>Two lines at a turn around the picture's middle, the first above the second as read.</summary>
    private static (PictureRegion, string)[] TwoLines(double degrees, double scale = 1)
    {
        var turn = degrees * Math.PI / 180;
        PictureRegion Line(double down, double length) => new(new(300 - (down * scale * Math.Sin(turn)), 250 + (down * scale * Math.Cos(turn))), length * scale, 46 * scale, turn);
        return [(Line(-40, 260), "N52832"), (Line(40, 200), "QFAA10")];
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(180, 180)]
    [InlineData(90, 270)]
    [InlineData(-30, 30)]
    [InlineData(200, 160)]
    public void A_mark_at_any_angle_is_read_with_the_turn_that_makes_it_upright(double direction, double turn)
    {
        var networks = new DrawnNetworks(TwoLines(direction));
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
        Assert.Equal(["N52832", "QFAA10"], read.Lines.Select(line => line.Reading.Text));
        Assert.Equal(turn, read.TurnDeg, 0.7);
        Assert.Empty(read.Otherwise);
        Assert.Empty(read.Says);
        Assert.Equal(2, networks.Scored);
        for (var i = 0; i < 2; i++)
        {
            var truth = TwoLines(direction)[i].Item1.Corners;
            for (var corner = 0; corner < 4; corner++) Assert.InRange(read.Lines[i].Outline[corner].DistanceTo(truth[corner]), 0, 6);
        }

        // Six symbols of 0.96 each.
        Assert.Equal(Math.Pow(0.96, 6), read.Lines[0].Reading.P, 0.02);
        // Each place stands where its character does.
        for (var i = 0; i < 6; i++) Assert.InRange(read.Lines[0].At(read.Lines[0].Reading.Places[i]).DistanceTo(TwoLines(direction)[0].Item1.At(((i + 0.5) / 6) - 0.5, 0)), 0, 8);
    }

    [Fact]
    public void Small_characters_are_looked_at_closer()
    {
        var networks = new DrawnNetworks(TwoLines(20, 0.4));
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
        Assert.Equal(["N52832", "QFAA10"], read.Lines.Select(line => line.Reading.Text));
        Assert.Equal(2, networks.Looked.Count);
        Assert.True(networks.Looked[1].Region.Width < 200);
    }

    // A crop of fifty pixels enlarged to the sheet shows blurs where half as large it shows letters.
    [Theory]
    [InlineData(384, "384")]
    [InlineData(300, "384 269 192")]
    [InlineData(200, "384 269 192")]
    [InlineData(100, "384 269 192")]
    public void Where_nothing_is_read_with_even_odds_the_region_is_looked_at_coarser(int finest, string looks)
    {
        var networks = new DrawnNetworks(TwoLines(20)) { Finest = finest };
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
        Assert.Equal(looks, string.Join(' ', networks.Looked.Where(sheet => sheet.Region == All).Select(sheet => sheet.ValidWidth)));
        Assert.Equal(finest > 150 ? ["N52832", "QFAA10"] : [], read.Lines.Select(line => line.Reading.Text));
    }

    // Bright ends and silk screen around a small part (seen on photographed resistors and coils): a tenth of the shorter side less on every side.
    [Theory]
    [InlineData(600, "600 × 500")]
    [InlineData(500, "600 × 500, 500 × 400, 600 × 500, 600 × 500")]
    [InlineData(400, "600 × 500, 500 × 400, 600 × 500, 600 × 500")]
    public void Where_nothing_is_read_with_even_odds_the_region_is_looked_at_without_its_rim(int widest, string looks)
    {
        var networks = new DrawnNetworks(TwoLines(0)) { Widest = widest };
        var reader = new MarkReader(networks);
        var scanned = reader.Scan(networks.Paint(600, 500), All);
        Assert.Equal(looks, string.Join(", ", networks.Looked.Select(sheet => FormattableString.Invariant($"{sheet.Region.Width} × {sheet.Region.Height}"))));
        Assert.Equal(widest >= 500 ? ["N52832", "QFAA10"] : [], reader.Weigh(scanned).Lines.Select(line => line.Reading.Text));
        // What was found lies where it lies in the picture, whichever look found it.
        Assert.All(scanned.Lines, line => Assert.Contains(TwoLines(0), truth => truth.Item1.Middle.DistanceTo(line.Outline.Middle) < 6));
    }

    // A lot code and its last digits in a second column, as they stand on many large bodies (seen on real ones: gaps of 1.5 to 4.5 heights).
    [Theory]
    [InlineData(0, 60, true)]
    [InlineData(35, 200, true)]
    [InlineData(35, 300, false)]
    public void Text_of_one_row_is_one_line_however_wide_its_gap(double degrees, double gap, bool one)
    {
        var turn = degrees * Math.PI / 180;
        PictureRegion Piece(double along, double down, double length) => new(new(300 + (along * Math.Cos(turn)) - (down * Math.Sin(turn)), 250 + (along * Math.Sin(turn)) + (down * Math.Cos(turn))), length, 46, turn);
        var networks = new DrawnNetworks((Piece(0, -60, 260), "N52832"), (Piece(-130, 30, 130), "SC1F6"), (Piece(-65 + gap + 30, 30, 60), "35"));
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
        Assert.Equal(one ? ["N52832", "SC1F635"] : ["N52832", "SC1F6", "35"], read.Lines.Select(line => line.Reading.Text));
        if (!one) return;
        // Both pieces right: seven symbols of 0.96. Each place stands where its character does.
        Assert.Equal(Math.Pow(0.96, 7), read.Lines[1].Reading.P, 0.02);
        Assert.InRange(read.Lines[1].At(read.Lines[1].Reading.Places[0]).DistanceTo(Piece(-130, 30, 130).At(-0.4, 0)), 0, 8);
        Assert.InRange(read.Lines[1].At(read.Lines[1].Reading.Places[^1]).DistanceTo(Piece(-65 + gap + 30, 30, 60).At(0.25, 0)), 0, 8);
        Assert.Equal(read.Lines[1].Reading.Readings[0].P, read.Lines[1].Reading.Readings.Max(each => each.P));
        Assert.InRange(read.Lines[1].Reading.Readings.Sum(each => each.P), 0.8, 1);
    }

    [Theory]
    [InlineData(0.3, false)]
    [InlineData(0.04, true)]
    public void A_lone_character_that_is_not_sure_is_kept_as_a_mark_that_is_no_text(double doubt, bool text)
    {
        var networks = new DrawnNetworks((new(new(120, 160), 110, 46, 0), "C"), (new(new(330, 250), 260, 46, 0), "N52832")) { Doubts = new Dictionary<int, (char, double)> { [0] = ('G', doubt) } };
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
        Assert.Equal(text ? ["C", "N52832"] : ["N52832"], read.Lines.Select(line => line.Reading.Text));
        if (text) Assert.Empty(read.Emblems);
        else Assert.InRange(Assert.Single(read.Emblems).Outline.Middle.DistanceTo(new(120, 160)), 0, 6);
    }

    [Fact]
    public void A_region_at_a_turn_gives_the_turn_of_the_picture()
    {
        var networks = new DrawnNetworks(TwoLines(130));
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), new(new(300, 250), 340, 220, 0.7)));
        Assert.Equal("N52832", read.Lines[0].Reading.Text);
        Assert.Equal(230, read.TurnDeg, 0.7);
    }

    [Fact]
    public void Where_directions_contradict_each_other_both_ways_are_read_and_the_likelier_comes_first()
    {
        foreach (var degrees in new[] { 0.0, 180 })
        {
            // One line says up, the other down: the vote is a draw, the reader decides.
            var networks = new DrawnNetworks(TwoLines(degrees)) { Directions = 0 };
            var reader = new MarkReader(networks);
            var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
            Assert.Equal(["N52832", "QFAA10"], read.Lines.Select(line => line.Reading.Text));
            Assert.Equal(degrees, read.TurnDeg, 0.7);
            // Upside down it is noise: that settles it.
            Assert.Empty(read.Otherwise);
            Assert.Empty(read.Says);
            // A mark that reads like one either way stays open, and both ways are told.
            networks = new DrawnNetworks(TwoLines(degrees)) { Directions = 0, UpsideDown = "SOHIX" };
            reader = new MarkReader(networks);
            read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
            Assert.Equal(["N52832", "QFAA10"], read.Lines.Select(line => line.Reading.Text));
            Assert.Equal(["SOHIX", "SOHIX"], read.Otherwise.Select(line => line.Reading.Text));
            Assert.Equal([ReadingSentences.EitherWayUp], read.Says);
        }
    }

    [Fact]
    public void Upright_looks_for_no_turn()
    {
        // The finder holds a mark for upside down that the person says is upright.
        var networks = new DrawnNetworks(TwoLines(3)) { Directions = -1 };
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All, upright: true), upright: true);
        Assert.Equal(0, read.TurnDeg);
        Assert.Equal(["N52832", "QFAA10"], read.Lines.Select(line => line.Reading.Text));
    }

    [Fact]
    public void A_worn_place_stays_open_in_text_and_lattice()
    {
        var networks = new DrawnNetworks(TwoLines(0)[..1]) { Doubts = new Dictionary<int, (char, double)> { [3] = ('B', 0.3), [1] = ('S', 0.55) } };
        var reader = new MarkReader(networks);
        var line = Assert.Single(reader.Weigh(reader.Scan(networks.Paint(600, 500), All)).Lines);
        Assert.Equal("NS2832", line.Reading.Text);
        Assert.Equal(["S", "5"], line.Reading.Places[1].Top.Take(2).Select(each => each.Symbol));
        Assert.Equal(0.55, line.Reading.Places[1].Top[0].P, 0.02);
        Assert.Equal(("B", 0.3), (line.Reading.Places[3].Top[1].Symbol, Math.Round(line.Reading.Places[3].Top[1].P, 2)));
    }

    [Fact]
    public void Two_pictures_of_one_mark_are_matched_line_by_line()
    {
        // The second picture shows the mark upside down, one line more, and doubts another place.
        var first = new DrawnNetworks(TwoLines(0)) { Doubts = new Dictionary<int, (char, double)> { [1] = ('S', 0.6) } };
        (PictureRegion, string)[] more = [.. TwoLines(180), (new(new(300, 90), 180, 46, Math.PI), "2107")];
        var second = new DrawnNetworks(more) { Doubts = new Dictionary<int, (char, double)> { [1] = ('X', 0.2) } };
        var (a, b) = (new MarkReader(first).Scan(first.Paint(600, 500), All), new MarkReader(second).Scan(second.Paint(600, 500), All));
        Assert.Equal("NS2832", new MarkReader(first).Weigh(a).Lines[0].Reading.Text);
        Assert.True(MarkCombining.Of([a, b], 1).TryValue(out var both));
        Assert.Equal(["N52832", "QFAA10", "2107"], both.Lines.Select(line => line.Reading.Text));
        Assert.Equal([0, 0, 1], both.Lines.Select(line => line.Picture));
        // Where the second shows what both do is kept as it found it.
        Assert.Equal([1, 1, 0], both.Lines.Select(line => line.Also.Count));
        Assert.Equal((1, b.Lines[0].Outline), (both.Lines[0].Also[0].Picture, both.Lines[0].Also[0].Region));
        // 5 against S: 0.4 × 0.8 against 0.6 × (next to nothing).
        Assert.InRange(both.Lines[0].Reading.Places[1].Top[0].P, 0.99, 1);
    }

    [Fact]
    public void Pictures_of_two_marks_are_not_combined()
    {
        var (first, second) = (new DrawnNetworks(TwoLines(0)[..1]), new DrawnNetworks((TwoLines(0)[0].Item1, "78L05")));
        var refused = MarkCombining.Of([new MarkReader(first).Scan(first.Paint(600, 500), All), new MarkReader(second).Scan(second.Paint(600, 500), All)], 1);
        Assert.Equal("These pictures have no line of text in common: they do not show one mark, or one of them is not readable. They were not combined.", Assert.Single(refused.Faults).Say);
    }

    [Fact]
    public void A_picture_of_one_grey_is_not_read_and_noise_is_no_line()
    {
        // A finder that would see lines anywhere.
        var networks = new DrawnNetworks(TwoLines(0)) { Opinion = 0.2 };
        var reader = new MarkReader(networks);
        var even = reader.Weigh(reader.Scan(new(new float[600 * 500], 600, 500), All));
        Assert.Equal((0, 0), (even.Lines.Count, networks.Scored));
        Assert.Equal([ReadingSentences.NoText], even.Says);

        // Lines where nothing but a speck is painted: a weak opinion here and there, and no whole reading worth one chance in twenty.
        var bare = new float[600 * 500];
        bare[0] = 1;
        var noise = reader.Weigh(reader.Scan(new(bare, 600, 500), All));
        Assert.Empty(noise.Lines);
        Assert.Equal("Something like 2 lines of text was found, and nothing of them could be read. Take one part alone, by a box around it or from closer up; light from the side brings a worn mark out.", noise.Says[0]);
        Assert.StartsWith("Something like a line of text was found, and nothing of it could be read. ", ReadingSentences.NothingLegible(1), StringComparison.Ordinal);
    }

    [Fact]
    public void No_text_says_so_and_a_page_is_read_and_told()
    {
        var none = new DrawnNetworks();
        var reader = new MarkReader(none);
        var read = reader.Weigh(reader.Scan(none.Paint(600, 500), All));
        Assert.Empty(read.Lines);
        Assert.Equal([ReadingSentences.NoText], read.Says);

        // A page: a hundred lines in four columns; none of them is lost.
        (PictureRegion, string)[] page = [.. Enumerable.Range(0, 100).Select(i => (PictureRegion.Box(20 + (i % 4 * 235), 20 + (i / 4 * 39), 180, 22), "A"))];
        var printed = new DrawnNetworks(page);
        reader = new MarkReader(printed);
        var scanned = reader.Scan(printed.Paint(960, 1000), PictureRegion.Box(0, 0, 960, 1000));
        Assert.Equal(scanned.Found, printed.Scored);
        Assert.Equal(100, scanned.Found);
        Assert.Equal($"{scanned.Found} lines were found, more than a part carries: a label, a page or a whole board. All of them were read; take one part by a box around it to read it alone, or have the parts of a board found.", reader.Weigh(scanned).Says[^1]);
    }

    [Fact]
    public void A_click_on_a_body_is_enough()
    {
        var body = new PictureRegion(new(300, 250), 320, 200, 0.2);
        var networks = new DrawnNetworks(TwoLines(0.2 * 180 / Math.PI)) { Body = body, Dot = new(180, 160) };
        var reader = new MarkReader(networks);
        var picture = networks.Paint(600, 500);
        var found = reader.Body(picture, new(310, 240))!.Value;
        Assert.InRange(found.Middle.DistanceTo(body.Middle), 0, 4);
        Assert.Equal(body.Width, found.Width, 8.0);
        Assert.Equal(body.Height, found.Height, 8.0);
        Assert.Equal(body.Turn, found.Turn, 0.03);
        var scanned = reader.Scan(picture, found.Grown(5));
        Assert.Equal(["N52832", "QFAA10"], reader.Weigh(scanned).Lines.Select(line => line.Reading.Text));
        Assert.InRange(scanned.Dot!.Value.DistanceTo(new(180, 160)), 0, 4);
        Assert.Null(reader.Body(picture, new(590, 20)));
    }

    // Pin 1 at the lower left of the upright mark: two public notes for builders and a maker's engineer ("almost all package markings").
    [Theory]
    [InlineData(0, 180, 320, "lower left", ReadingSentences.DotAgrees)]
    [InlineData(180, 180, 320, "upper right", ReadingSentences.DotOpposite)]
    [InlineData(0, 180, 180, "upper left", ReadingSentences.DotAtUpperLeft)]
    [InlineData(0, 420, 320, "lower right", ReadingSentences.DotAtLowerRight)]
    public void A_dot_is_told_with_its_corner_on_the_upright_body_and_an_emblem_with_its_place(double degrees, double x, double y, string corner, string says)
    {
        var networks = new DrawnNetworks(TwoLines(degrees)) { Body = new(new(300, 250), 300, 200, 0), Dot = new(x, y), Emblem = (new(410, 160), 40) };
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
        Assert.Equal((corner, says, true), (read.PinOne!.Corner, read.PinOne.Says, read.PinOne.IsClear));
        Assert.InRange(read.PinOne.At.DistanceTo(new(x, y)), 0, 4);
        Assert.InRange(read.PinOne.P, 0.9, 1);
        var emblem = Assert.Single(read.Emblems);
        Assert.InRange(emblem.Outline.Middle.DistanceTo(new(410, 160)), 0, 6);
        Assert.Equal(40, emblem.Outline.Width, 10.0);
    }

    [Fact]
    public void A_dot_half_way_along_a_side_tells_no_corner_and_an_emblem_among_the_text_is_text()
    {
        var networks = new DrawnNetworks(TwoLines(0)) { Body = new(new(300, 250), 300, 200, 0), Dot = new(180, 250), Emblem = (new(300, 210), 36) };
        var reader = new MarkReader(networks);
        var read = reader.Weigh(reader.Scan(networks.Paint(600, 500), All));
        Assert.False(read.PinOne!.IsClear);
        Assert.Matches("^The pin-1 dot lies between two corners of the upright mark, nearest to the (upper|lower) left one: it does not tell which way up the mark reads.$", read.PinOne.Says);
        Assert.Empty(read.Emblems);
        Assert.Equal("a mark that is no text, at 80,60, 40 × 20 px", ReadingSentences.Emblem(PictureRegion.Box(80, 60, 40, 20)));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(Math.PI, 180)]
    [InlineData(Math.PI / 2, 270)]
    [InlineData(-Math.PI / 2, 90)]
    [InlineData(1e-9, 0)]
    [InlineData(-0.3, 17.2)]
    public void A_turn_is_told_in_tenths_from_0_to_below_360(double direction, double turn) => Assert.Equal(turn, MarkReader.TurnOf(direction));
}
