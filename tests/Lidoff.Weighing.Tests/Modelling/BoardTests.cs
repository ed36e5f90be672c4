using System.Globalization;
using Lidoff.Evidence.Grading;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Weighing.Tests.Modelling;

/// <summary>
/// A board seen from both sides: at 100 px/mm in p.png, at 80 px/mm and mirrored in b.png, X mm from the left of the top at 1800 − 80·X px and
/// Y at 100 + 80·Y px. Lengths by hand from there.
/// </summary>
public sealed class BoardTests
{
    private const string Scale = """{"kind":"scale","picture":"p.png","from":[0,500],"to":[1000,500],"length_mm":10,"u_mm":0.01,"specimen":"A"}""";
    private const string InBottom = """{"kind":"length","picture":"b.png","spot":"U1","what":"width","from":[700,300],"to":[1180,300],"specimen":"A"}""";
    private const string InTop = """{"kind":"length","picture":"p.png","spot":"U1","what":"width","from":[100,300],"to":[700,300],"specimen":"A"}""";

    private static readonly string[] Landmarks =
    [
        """{"kind":"picture","file":"p.png","side":"top","specimen":"A"}""",
        """{"kind":"picture","file":"b.png","side":"bottom","specimen":"A"}""",
        .. new[] { ("H1", 2, 2), ("H2", 18, 2), ("H3", 18, 8), ("H4", 2, 8), ("V1", 9, 4) }.SelectMany(each => new[] { Seen(each.Item1, "p.png", 100 * each.Item2, 100 * each.Item3), Seen(each.Item1, "b.png", 1800 - (80 * each.Item2), 100 + (80 * each.Item3)) }),
    ];

    [Fact]
    public void A_picture_without_a_known_length_measures_by_the_board()
    {
        using var bench = Begun([Scale, InBottom]);
        Assert.Equal("'b.png' has no scale: note a known length in it (kind \"scale\").", bench.Model.Value("length:U1:width").Missing);
        bench.Note(Landmarks);
        var value = bench.Model.Value("length:U1:width");
        // 480 px at 80 px/mm.
        Assert.Equal(6.0, value.Number!.Value * 1e3, 3);
        Assert.Equal("clicked in b.png, scale from the board, by 5 landmarks", Assert.Single(bench.Model.Length("U1", "width").Readings).How);
        // The length, ten landmarks, the scale in the other picture, both files.
        Assert.Equal(14, value.RestsOn.Count);
        Assert.Equal(Grade.E2, value.Grade);
        Assert.Equal(["b.png", "p.png"], bench.Model.Boards("A").Boards.Single().Laid.Pictures.Select(picture => picture.Name).Order(StringComparer.Ordinal));
    }

    // Worked by hand: a hole 3 mm wide about (9, 4) has its edge 120 px from (1080, 420); leads every 40 px are 0.5 mm apart; 480 by 240 px are 6 by 3 mm.
    [Theory]
    [InlineData("circle", "[1200,420],[1080,540],[960,420],[1080,300]", 3.0)]
    [InlineData("pitch", "[400,300],[440,300],[480,300],[560,300]", 0.5)]
    [InlineData("area", "[400,300],[880,300],[880,540],[400,540]", 18.0)]
    [InlineData("angle", "[880,300],[400,300],[400,540]", 90.0)]
    public void Shapes_in_a_picture_without_a_known_length_measure_by_the_board(string shape, string points, double expected)
    {
        var clicked = $$"""{"kind":"shape","shape":"{{shape}}","picture":"b.png","spot":"U1","what":"it","points":[{{points}}],"specimen":"A"}""";
        using var bench = Begun([Scale, .. Landmarks, clicked]);
        var reading = Assert.Single(bench.Model.Shape("U1", ClickedShapeKind.Shapes.Single(each => each.Word == shape).Shape, "it").Readings);
        Assert.Equal(expected, reading.Value, 3);
        Assert.True(reading.ByBoard && reading.Board.Length > 0);
        Assert.EndsWith(", scale from the board, by 5 landmarks", reading.How, StringComparison.Ordinal);
        // No less than the clicks' own part, 1 px at 80 px/mm; with one known length how the pictures lean is open, within a tenth.
        Assert.InRange(reading.U, shape switch { "circle" => 0.5 / 80, "pitch" => 0.2 / 80, "area" => 3.0 / 80, _ => 0.1 }, 0.1 * expected);
        if (shape == "circle") Assert.Equal(3.0, bench.Model.Value("length:U1:it").Number!.Value * 1e3, 3);
    }

    [Fact]
    public void An_angle_needs_no_known_length_and_an_area_asks_for_one()
    {
        const string shape = """{"kind":"shape","shape":"SHAPE","picture":"b.png","spot":"U1","what":"it","points":[[880,300],[400,300],[400,540]],"specimen":"A"}""";
        using var bench = Begun([.. Landmarks, shape.Replace("SHAPE", "angle", StringComparison.Ordinal), shape.Replace("SHAPE", "area", StringComparison.Ordinal)]);
        Assert.Equal(90, Assert.Single(bench.Model.Shape("U1", ShapeKind.Angle, "it").Readings).Value, 3);
        Assert.StartsWith("'b.png' lies on its board, but no length on that board is known", Assert.Single(bench.Model.Shape("U1", ShapeKind.Area, "it").Problems), StringComparison.Ordinal);
    }

    [Fact]
    public void Lengths_of_one_board_by_one_scale_are_one_line_of_evidence()
    {
        using var bench = Begun([Scale, .. Landmarks, InBottom, InTop]);
        Assert.Equal(2, bench.Model.Length("U1", "width").Readings.Count);
        Assert.Equal(Grade.E2, bench.Model.Value("length:U1:width").Grade);
    }

    [Fact]
    public void An_area_seen_twice_by_one_board_is_one_line_of_evidence()
    {
        const string shape = """{"kind":"shape","shape":"area","picture":"b.png","spot":"U1","what":"it","points":[[400,300],[880,300],[880,540],[400,540]],"specimen":"A"}""";
        // The same field of 6 by 3 mm from the top, where 100 px are a millimetre.
        var top = shape.Replace("b.png", "p.png", StringComparison.Ordinal).Replace("[[400,300],[880,300],[880,540],[400,540]]", "[[1150,250],[1750,250],[1750,550],[1150,550]]", StringComparison.Ordinal);
        using var bench = Begun([Scale, .. Landmarks, shape, top]);
        var value = bench.Model.Value("area:U1:it");
        Assert.Equal(2, bench.Model.Shape("U1", ShapeKind.Area, "it").Readings.Count);
        Assert.Equal(Grade.E2, value.Grade);
        Assert.Equal(18, value.Number!.Value * 1e6, 3);
    }

    [Fact]
    public void A_package_that_scales_the_board_is_no_evidence_of_itself_on_the_other_side_either()
    {
        using var bench = Begun([Scale.Replace("\"specimen\"", "\"package\":\"U1\",\"specimen\"", StringComparison.Ordinal), .. Landmarks, InBottom, InBottom.Replace("U1", "U2", StringComparison.Ordinal)]);
        Assert.True(Assert.Single(bench.Model.Length("U1", "width").Readings).OwnPackage);
        Assert.False(Assert.Single(bench.Model.Length("U2", "width").Readings).OwnPackage);
    }

    [Fact]
    public void What_stands_above_the_board_is_told_so()
    {
        using var bench = Begun([Scale, .. Landmarks, InBottom.Replace("\"specimen\"", "\"height_mm\":0.8,\"specimen\"", StringComparison.Ordinal)]);
        var reading = Assert.Single(bench.Model.Length("U1", "width").Readings);
        Assert.Equal(WarningCodes.OtherPlane, Assert.Single(reading.Warnings).Code);
        // A camera at one and a half long sides of 25 mm: 0.8 of 37.5 mm is 2 %; nearer or farther by a factor 1.8.
        Assert.InRange(reading.Mm, 5.75, 5.95);
        Assert.InRange(6.0 * (1 - (0.8 / 37.5)), reading.Low, reading.High);
    }

    [Fact]
    public void A_scale_that_the_board_contradicts_is_told_with_both_numbers()
    {
        using var bench = Begun([Scale, .. Landmarks, InBottom, """{"kind":"scale","picture":"b.png","from":[1000,500],"to":[1800,500],"length_mm":9.5,"u_mm":0.01,"specimen":"A"}"""]);
        var warning = Assert.Single(Assert.Single(bench.Model.Length("U1", "width").Readings).Warnings);
        Assert.Equal(WarningCodes.ReferenceDisagrees, warning.Code);
        Assert.Matches("^The known length of 9\\.5 ± 0\\.0[0-9]+ mm in “b\\.png” comes to (9\\.9|10)[0-9.]* ± [0-9.]+ mm by the board", warning.Say);
    }

    [Fact]
    public void Without_a_known_length_anywhere_it_says_where_one_would_do()
    {
        using var bench = Begun([.. Landmarks, InBottom]);
        Assert.Equal("'b.png' lies on its board, but no length on that board is known: note one in any of its pictures (kind \"scale\").", bench.Model.Value("length:U1:width").Missing);
        Assert.False(bench.Model.Measures(bench.Model.Picture("b.png").Sha256));
    }

    [Fact]
    public void A_picture_left_out_of_the_board_says_what_would_help()
    {
        using var bench = Begun([Scale, .. Landmarks, Seen("H1", "c.png", 100, 100), InBottom.Replace("b.png", "c.png", StringComparison.Ordinal)]);
        Assert.Equal(
            ["'c.png' has no scale: note a known length in it (kind \"scale\").", "“c.png” was left out: it shares one landmark with the board, and two are needed, better four far apart. Point at “H2”, “H3”, “H4”, “V1” in it, whichever it shows."],
            bench.Model.Length("U1", "width").Problems);
    }

    [Fact]
    public void Landmarks_that_lead_nowhere_are_told()
    {
        using var bench = Begun([.. Landmarks, Seen("H9", "gone.png", 1, 1), Seen("H9", "b.png", 2400, 1)]);
        Assert.Equal(
            ["No picture of this dossier is called 'gone.png'; give its file name, its entry or the start of its hash.", "“H9” lies at (2400, 1), outside the picture of 2000 × 1000 pixels."],
            bench.Model.Boards("A").Problems);
    }

    [Fact]
    public void Places_known_from_a_drawing_make_one_picture_measure()
    {
        using var bench = Begun([.. Landmarks.Where(line => !line.Contains("p.png", StringComparison.Ordinal)), InBottom, .. new[] { ("H1", 2, 2), ("H2", 18, 2), ("H3", 18, 8), ("H4", 2, 8) }
            .Select(each => string.Create(CultureInfo.InvariantCulture, $$"""{"kind":"landmark","landmark":"{{each.Item1}}","mm":[{{each.Item2}},{{each.Item3}}]}"""))]);
        Assert.Equal(6.0, bench.Model.Value("length:U1:width").Number!.Value * 1e3, 3);
    }

    [Fact]
    public void What_has_no_landmarks_is_not_disturbed_and_another_specimen_neither()
    {
        using var bench = Begun([Scale, InTop]);
        _ = bench.Model.Value("length:U1:width");
        bench.Model.Graph.ResetCounts();
        bench.Note("""{"kind":"mass","spot":"U1","g":0.2,"specimen":"A"}""");
        _ = bench.Model.Value("length:U1:width");
        Assert.Equal(0, bench.Model.Graph.Counts("board").Computed);
        Assert.Equal(0, bench.Model.Graph.Counts("picture's board").Computed);

        bench.Note(Landmarks);
        _ = bench.Model.Value("length:U1:width");
        bench.Model.Graph.ResetCounts();
        bench.Note(Seen("H1", "c.png", 100, 100).Replace("\"A\"", "\"B\"", StringComparison.Ordinal));
        _ = bench.Model.Value("length:U1:width");
        Assert.Equal(0, bench.Model.Graph.Counts("length").Computed);
    }

    [Fact]
    public void Step_by_step_and_at_once_come_to_the_same()
    {
        using var bench = Begun([Scale, InBottom]);
        foreach (var line in Landmarks)
        {
            bench.Note(line);
            _ = bench.Model.Value("length:U1:width");
        }

        var (step, whole) = (bench.Model.Value("length:U1:width"), bench.Rebuilt().Value("length:U1:width"));
        Assert.Equal(step, whole);
        Assert.NotNull(step.Number);
    }

    private static Bench Begun(string[] lines)
    {
        var bench = new Bench();
        foreach (var name in new[] { "p.png", "b.png", "c.png" }) bench.Picture(name);
        bench.Note(lines);
        return bench;
    }

    private static string Seen(string name, string picture, int x, int y) =>
        string.Create(CultureInfo.InvariantCulture, $$"""{"kind":"landmark","landmark":"{{name}}","picture":"{{picture}}","point":[{{x}},{{y}}],"u_px":1,"specimen":"A"}""");
}
