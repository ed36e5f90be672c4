using System.Globalization;
using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Quantities;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Tests.Modelling;

/// <summary>Shapes clicked in a picture of 100 px/mm. Places are set out by plain geometry; standard pitches are those of the trade (2.54 mm and its half, metric 0.5 and 1.25 mm).</summary>
public sealed class ShapeTests
{
    private const string Scale = """{"kind":"scale","picture":"p.png","from":[0,500],"to":[1000,500],"length_mm":10,"u_mm":0.01}""";

    // Known lengths on every side of the picture: with them no slant is left that could make 1.25 mm out of 1.27.
    private static readonly string[] AllAround =
    [
        """{"kind":"scale","picture":"p.png","from":[0,50],"to":[2000,50],"length_mm":20,"u_mm":0.01}""",
        """{"kind":"scale","picture":"p.png","from":[0,950],"to":[2000,950],"length_mm":20,"u_mm":0.01}""",
        """{"kind":"scale","picture":"p.png","from":[50,0],"to":[50,1000],"length_mm":10,"u_mm":0.01}""",
        """{"kind":"scale","picture":"p.png","from":[1950,0],"to":[1950,1000],"length_mm":10,"u_mm":0.01}""",
    ];

    [Fact]
    public void A_circle_is_the_length_of_its_name_and_joins_what_a_caliper_said_of_it()
    {
        using var bench = Begun(Scale, Shape("H1", "circle", Circle(600, 400, 160, 8)));
        var value = bench.Model.Value("length:H1:diameter");
        Assert.Equal(3.2, value.Number!.Value * 1e3, 0.01);
        Assert.InRange(3.2e-3, value.Low, value.High);
        // The doubt of a picture whose slant nobody knows: within a few per cent.
        Assert.InRange(value.Number.U * 1e3, 0.005, 0.1);
        Assert.Equal((Grade.E2, 3), (value.Grade, value.RestsOn.Count)); // the circle, the scale, the file
        bench.Note("""{"kind":"length","spot":"H1","what":"diameter","mm":3.21,"u_mm":0.015,"instrument":"caliper"}""");
        Assert.Equal(Grade.E3, bench.Model.Value("length:H1:diameter").Grade);
    }

    [Theory]
    [InlineData(127, 1.27, 12, 5)]
    [InlineData(50, 0.5, 24, 9)]
    [InlineData(125, 1.25, 14, 7)]
    public void A_row_with_a_lead_left_out_gives_its_pitch_and_the_standard_one(double px, double mm, int leads, int missing)
    {
        using var bench = Begun([.. AllAround, Shape("J1", "pitch", [.. Enumerable.Range(0, leads).Where(lead => lead != missing).Select(lead => (60.0 + (px * lead), 300.0))])]);
        var value = bench.Model.Value("pitch:J1");
        Assert.Equal(mm, value.Number!.Value * 1e3, 0.002);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"{leads - 1} places clicked in p.png, {leads - 1} gaps"), value.Because[0], StringComparison.Ordinal);
        Assert.Contains(value.Because, say => say.StartsWith(string.Create(CultureInfo.InvariantCulture, $"That is the standard pitch of {mm:0.###} mm"), StringComparison.Ordinal));
        // What names the part hears of it too.
        Assert.Contains(bench.Model.Identity("J1").Evidence.Told, told => told.Evidence == "pitch" && told.Says == string.Create(CultureInfo.InvariantCulture, $"{mm:0.###} mm"));
    }

    [Fact]
    public void By_one_known_length_a_pitch_of_1_27_mm_may_be_1_25_and_no_standard_is_named()
    {
        using var bench = Begun(Scale, Shape("J1", "pitch", [.. Enumerable.Range(0, 12).Select(lead => (60.0 + (127 * lead), 300.0))]));
        var value = bench.Model.Value("pitch:J1");
        Assert.InRange(1.25e-3, value.Low, value.High);
        Assert.DoesNotContain(value.Because, say => say.Contains("standard pitch", StringComparison.Ordinal));
    }

    [Fact]
    public void A_noted_pitch_and_a_clicked_row_are_two_lines()
    {
        using var bench = Begun(Scale, Shape("J1", "pitch", [.. Enumerable.Range(0, 10).Select(lead => (60.0 + (50 * lead), 300.0))]), """{"kind":"pitch","spot":"J1","mm":0.51,"u_mm":0.02}""");
        var value = bench.Model.Value("pitch:J1");
        Assert.Equal(Grade.E3, value.Grade);
        Assert.InRange(value.Number!.Value * 1e3, 0.5, 0.51);
    }

    [Fact]
    public void An_angle_and_an_area_have_units_of_their_own()
    {
        using var bench = Begun(
            Scale,
            Shape("F1", "angle", [(900, 300), (600, 300), (600, 600)], "fold"),
            // A cell of 5 by 4 mm with a corner of 1 by 1 mm cut off: 20 − 0.5 = 19.5 mm².
            Shape("BT1", "area", [(300, 200), (800, 200), (800, 600), (400, 600), (300, 500)]));
        var (angle, area) = (bench.Model.Value("angle:F1:fold"), bench.Model.Value("area:BT1:area"));
        Assert.Equal((Units.Degree, Units.SquareMillimetre), (angle.Unit, area.Unit));
        Assert.Equal(90, angle.Number!.Value * 180 / Math.PI, 1);
        Assert.InRange(Math.PI / 2, angle.Low, angle.High);
        Assert.Equal(19.5, area.Number!.Value * 1e6, 0.1);
        Assert.InRange(19.5e-6, area.Low, area.High);
        Assert.Equal("Nobody has measured 'bore' of H1 yet.", bench.Model.Value("length:H1:bore").Missing);
        Assert.Equal("There is no lid of BT1 yet.", bench.Model.Value("area:BT1:lid").Missing);
    }

    [Fact]
    public void Twice_in_one_picture_is_one_line_and_another_picture_another()
    {
        (double, double)[] square = [(300, 200), (800, 200), (800, 600), (300, 600)];
        using var bench = Begun(Scale, Shape("BT1", "area", square), Shape("BT1", "area", [.. square.Select(at => (at.Item1 + 1, at.Item2))]));
        Assert.Equal(Grade.E2, bench.Model.Value("area:BT1:area").Grade);
        bench.Picture("q.png");
        bench.Note(Scale.Replace("p.png", "q.png", StringComparison.Ordinal), Shape("BT1", "area", square).Replace("p.png", "q.png", StringComparison.Ordinal));
        Assert.Equal(Grade.E3, bench.Model.Value("area:BT1:area").Grade);
    }

    [Fact]
    public void What_cannot_be_measured_says_why_and_stays()
    {
        using var bench = Begun(Shape("H1", "circle", Circle(600, 400, 160, 3)));
        Assert.Equal("'p.png' has no scale: note a known length in it (kind \"scale\").", bench.Model.Value("length:H1:diameter").Missing);
        bench.Note(Scale, Shape("H2", "circle", [(100, 100), (200, 100), (300, 100)]), Shape("J1", "pitch", [(100, 100), (200, 100), (2100, 100)]));
        Assert.Equal("The places lie on one line: no circle goes through them.", bench.Model.Value("length:H2:diameter").Missing);
        Assert.Contains("outside the picture", bench.Model.Value("pitch:J1").Missing, StringComparison.Ordinal);
    }

    private static (double, double)[] Circle(double x, double y, double radius, int places) =>
        [.. Enumerable.Range(0, places).Select(i => (x + (radius * Math.Cos(2 * Math.PI * i / places)), y + (radius * Math.Sin(2 * Math.PI * i / places))))];

    private static string Shape(string spot, string shape, (double X, double Y)[] points, string what = "") =>
        $$"""{"kind":"shape","spot":"{{spot}}","shape":"{{shape}}"{{(what.Length > 0 ? $",\"what\":\"{what}\"" : "")}},"picture":"p.png","points":[{{string.Join(',', points.Select(at => string.Create(CultureInfo.InvariantCulture, $"[{at.X},{at.Y}]")))}}]}""";

    private static Bench Begun(params string[] lines)
    {
        var bench = new Bench();
        bench.Picture("p.png");
        bench.Note(lines);
        return bench;
    }
}
