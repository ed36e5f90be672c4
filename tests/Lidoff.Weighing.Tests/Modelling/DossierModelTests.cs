using CsCheck;
using Lidoff.Evidence.Grading;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Quantities;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Weighing.Tests.Modelling;

public sealed class DossierModelTests
{
    private const string Scale = """{"kind":"scale","picture":"p.png","from":[0,500],"to":[1000,500],"length_mm":10,"u_mm":0.01}""";
    private const string Width = """{"kind":"length","picture":"p.png","spot":"U1","what":"width","from":[100,100],"to":[700,100]}""";

    // Taken square the length is pixels over scale and nothing else. Cameras that may have leaned come in pairs, one to each side, which move it
    // by as much up as down; what they leave is of second order, 2 in 10,000 of it. (Measured: 1.2 in 10,000 at most.)
    private const double Leaning = 2e-4;

    [Fact]
    public void A_length_is_its_pixels_over_the_scale()
    {
        using var bench = Begun(Scale, Width);
        var value = bench.Model.Value("length:U1:width");
        // 600 px at 100 px/mm.
        Assert.Equal(6.0, value.Number!.Value * 1e3, 6 * Leaning);
        Assert.InRange(6e-3, value.Low, value.High);
        Assert.Equal(Grade.E2, value.Grade);
        Assert.Equal(3, value.RestsOn.Count); // the length, the scale, the file
    }

    [Fact]
    public void Each_end_counts_with_its_own_doubt_where_that_is_known()
    {
        string Ends(string u) => Width.Replace("\"to\":[700,100]", $"\"to\":[700,100],\"ends_u_px\":{u}", StringComparison.Ordinal);
        double U(string line)
        {
            using var bench = Begun(Scale, line);
            return bench.Model.Value("length:U1:width").Number!.U * 1e3;
        }

        // 100 px/mm: ends of 3 and 4 px make 5 px together, 0.05 mm; those of the usual click √2 px. What the scale adds is in all of them.
        var (none, clicked, wide) = (U(Ends("[0,0]")), U(Width), U(Ends("[3,4]")));
        Assert.Equal(0.05, Math.Sqrt((wide * wide) - (none * none)), 0.002);
        Assert.Equal(0.01 * Math.Sqrt(2), Math.Sqrt((clicked * clicked) - (none * none)), 0.002);
    }

    [Fact]
    public void A_caliper_beside_the_picture_makes_two_lines_and_a_smaller_doubt()
    {
        using var bench = Begun(Scale, Width);
        var before = bench.Model.Value("length:U1:width");
        bench.Note("""{"kind":"length","spot":"U1","what":"width","mm":6.01,"u_mm":0.015,"instrument":"caliper"}""");
        var after = bench.Model.Value("length:U1:width");
        Assert.Equal(Grade.E3, after.Grade);
        Assert.True(after.Number!.U < before.Number!.U);
    }

    [Fact]
    public void Two_clicks_in_one_picture_are_one_line()
    {
        using var bench = Begun(Scale, Width, Width.Replace("[700,100]", "[700.5,100]", StringComparison.Ordinal));
        Assert.Equal(Grade.E2, bench.Model.Value("length:U1:width").Grade);
    }

    [Fact]
    public void Readings_that_disagree_are_widened_and_it_is_said()
    {
        using var bench = Begun(
            """{"kind":"length","spot":"U1","what":"width","mm":6.00,"u_mm":0.01,"instrument":"caliper"}""",
            """{"kind":"length","spot":"U1","what":"width","mm":6.20,"u_mm":0.01,"instrument":"micrometer"}""");
        var value = bench.Model.Value("length:U1:width");
        // Two readings of equal weight, 0.2 apart: mean 6.1, Birge ratio 0.1·√2/0.01 = 14.14, u = 0.01/√2 · 14.14 = 0.1 (by hand).
        Assert.Equal(6.1, value.Number!.Value * 1e3, 9);
        Assert.Equal(0.1, value.Number.U * 1e3, 9);
        Assert.Contains(value.Because, said => said.StartsWith("The readings disagree more than their doubts allow", StringComparison.Ordinal));
    }

    [Fact]
    public void A_superseded_scale_moves_the_length_and_undoing_brings_it_back_to_the_bit()
    {
        using var bench = Begun();
        var scale = bench.Note(Scale)[0];
        bench.Note(Width);
        var before = bench.Model.Value("length:U1:width");
        var taken = bench.Note(Scale.Replace("\"length_mm\":10", "\"length_mm\":20", StringComparison.Ordinal), $$"""{"kind":"supersede","target":"{{scale.Id.Hex}}","by_line":1}""");
        Assert.Equal(12.0, bench.Model.Value("length:U1:width").Number!.Value * 1e3, 12 * Leaning);
        bench.Note($$"""{"kind":"undo","target":"{{taken[1].Id.Hex}}"}""", $$"""{"kind":"undo","target":"{{taken[0].Id.Hex}}"}""");
        var after = bench.Model.Value("length:U1:width");
        Assert.Equal(before.Number!.Value, after.Number!.Value);
        Assert.Equal(before.High, after.High);
    }

    [Theory]
    [InlineData("length:U1:width", "'p.png' has no scale: note a known length in it (kind \"scale\").")]
    [InlineData("length:U1:depth", "Nobody has measured 'depth' of U1 yet; measured of it: width.")]
    [InlineData("length:U7:width", "Nobody has measured 'width' of U7 yet.")]
    [InlineData("part:U9", "Nothing was seen yet that could name the part at U9: no mark, size, pins, address or register.")]
    [InlineData("state:asleep", "There is no current of state asleep yet.")]
    [InlineData("R4", "There is no reckoning called 'R4' in this dossier.")]
    [InlineData("nonsense", "'nonsense' is no reference Lidoff knows; write length:SPOT:WHAT, body:SPOT:length (or width, height), pitch:SPOT, angle:SPOT:WHAT, area:SPOT:WHAT, part:SPOT, mark:SPOT, mass:SPOT, state:NAME or reckoning:NAME.")]
    public void What_is_not_known_says_why(string reference, string sentence) 
    {
        using var bench = Begun(Width);
        Assert.Equal(sentence, bench.Model.Value(reference).Missing);
    }

    [Fact]
    public void A_length_in_a_picture_that_is_not_there_says_so()
    {
        using var bench = new Bench();
        bench.Note(Width);
        Assert.Equal("No picture of this dossier is called 'p.png'; give its file name, its entry or the start of its hash.", bench.Model.Value("length:U1:width").Missing);
    }

    [Fact]
    public void A_reckoning_takes_a_measured_length_and_circles_are_said()
    {
        using var bench = Begun(
            Scale, Width,
            """{"kind":"reckon","reckoning":"R1","calculation":"trace_resistance","inputs":{"length":{"from":"length:U1:width"},"width":"0.2 mm","thickness":"18 µm"}}""",
            """{"kind":"reckon","reckoning":"R2","calculation":"energy_from_capacity","inputs":{"capacity":{"from":"R3"},"voltage":"3.7"}}""",
            """{"kind":"reckon","reckoning":"R3","calculation":"capacity_from_energy","inputs":{"energy":{"from":"reckoning:R2"},"voltage":"3.7"}}""");
        var value = bench.Model.Value("R1");
        // IEC 60028 copper, 50 mm × 0.2 mm × 18 µm is 239.458 mΩ (IR table, worked outside), so 6 mm is 28.735 mΩ.
        Assert.Equal(239.458 * 6 / 50, value.Number!.Value * 1e3, 0.05);
        Assert.Equal(Grade.E1, value.Grade); // typed width and thickness
        Assert.Equal("The reckoning 'R2' leans on itself, over others or directly; break the circle.", bench.Model.Value("R2").Missing);
    }

    [Fact]
    public void A_runtime_takes_the_current_that_was_noted_before_opening()
    {
        using var bench = Begun(
            """{"kind":"state","name":"asleep","current_ua":2000,"u_ua":100}""",
            """{"kind":"reckon","reckoning":"R1","calculation":"runtime","inputs":{"capacity":"200 mAh","sleep_current":{"from":"state:asleep"}}}""");
        // 200 mAh at 2 mA are a hundred hours, known as well as the current is: 5 %.
        var value = bench.Model.Value("R1");
        Assert.Equal(100, value.Number!.Value / 3600, 0.5);
        Assert.Equal(5, value.Number.U / 3600, 0.2);
        Assert.Equal("current in state asleep", bench.Model.Value("state:asleep").Says);
    }

    [Fact]
    public void A_name_comes_from_all_rooms_and_a_person_can_settle_it()
    {
        using var bench = Begun("""{"kind":"mark","spot":"U1","lines":["ZX528?2"]}""");
        Assert.Equal("ZX52832", bench.Model.Identity("U1").Says);
        bench.Note("""{"kind":"body","spot":"U1","mm":[6.0,6.0],"u_mm":0.03}""", """{"kind":"pins","spot":"U1","count":48}""");
        var two = bench.Model.Identity("U1");
        Assert.Equal((NameLevel.Part, Grade.E3), (two.Level, two.Grade));
        bench.Note("""{"kind":"decide","spot":"U1","not_listed":true,"why":"the mark is a house number"}""");
        var settled = bench.Model.Identity("U1");
        Assert.NotEqual("ZX52832", settled.P > 0.9 ? settled.Says : "");
        Assert.Equal(1.0, settled.Joint.P.Sum(), 9);
    }

    [Fact]
    public void A_package_taken_as_the_scale_is_no_evidence_of_itself_and_one_of_another_spot()
    {
        // A square body of 6 mm at U1, taken for the scale; the same clicks again are its "measured" sides. U2 beside it is 3 mm square.
        string[] square =
        [
            """{"kind":"scale","picture":"p.png","from":[100,100],"to":[700,100],"length_mm":6,"u_mm":0.03,"package":"U1"}""",
            """{"kind":"length","picture":"p.png","spot":"U1","what":"long side","from":[100,100],"to":[700,100]}""",
            """{"kind":"length","picture":"p.png","spot":"U1","what":"short side","from":[700,100],"to":[700,700]}""",
            """{"kind":"shape","picture":"p.png","spot":"U1","shape":"pitch","points":[[100,100],[140,100],[180,100],[220,100]]}""",
            """{"kind":"length","picture":"p.png","spot":"U2","what":"long side","from":[800,100],"to":[1100,100]}""",
            """{"kind":"length","picture":"p.png","spot":"U2","what":"short side","from":[1100,100],"to":[1100,400]}""",
        ];
        using var bench = Begun(square);
        Assert.DoesNotContain(bench.Model.Identity("U1").Evidence.Told, told => told.Evidence is "body" or "long side" or "short side" or "pitch");
        Assert.Contains(bench.Model.Identity("U2").Evidence.Told, told => told.Evidence == "body");
        // The length itself stands, and says what it cannot say.
        var value = bench.Model.Value("length:U1:long side");
        Assert.Equal(6.0, value.Number!.Value * 1e3, 0.01);
        Assert.EndsWith("(scaled by its own package, so it says nothing of which package that is)", value.Because[0], StringComparison.Ordinal);
        // With a caliper there is evidence of its own.
        bench.Note("""{"kind":"length","spot":"U1","what":"long side","mm":6.01,"u_mm":0.015,"instrument":"caliper"}""");
        var told = Assert.Single(bench.Model.Identity("U1").Evidence.Told, told => told.Evidence == "long side");
        Assert.Equal("6.010 ± 0.015 mm", told.Says);
    }

    [Fact]
    public void An_edit_touches_its_dependants_and_nothing_else()
    {
        using var bench = new Bench();
        for (var i = 0; i < 20; i++)
        {
            bench.Picture($"p{i}.png");
            bench.Note(
                Scale.Replace("p.png", $"p{i}.png", StringComparison.Ordinal),
                Width.Replace("p.png", $"p{i}.png", StringComparison.Ordinal).Replace("U1", $"U{i}", StringComparison.Ordinal),
                $$"""{"kind":"mark","spot":"U{{i}}","lines":["ZX52832"]}""");
        }

        void Ask()
        {
            for (var i = 0; i < 20; i++)
            {
                bench.Model.Value($"length:U{i}:width");
                bench.Model.Value($"part:U{i}");
            }
        }

        Ask();
        bench.Model.Graph.ResetCounts();
        bench.Note("""{"kind":"mark","spot":"U7","lines":["QB24075"]}""");
        Ask();
        Assert.Equal(1, bench.Model.Graph.Counts("evidence").Computed);
        Assert.Equal(1, bench.Model.Graph.Counts("identity").Computed);
        Assert.Equal(1, bench.Model.Graph.Counts("value").Computed);
        Assert.Equal(0, bench.Model.Graph.Counts("length").Computed);
    }

    [Fact]
    public void Step_by_step_equals_all_at_once()
    {
        var line = Gen.OneOf(
            Gen.Select(Gen.Int[0, 3], Gen.Int[50, 900], (spot, to) => $$"""{"kind":"length","picture":"p.png","spot":"U{{spot}}","what":"width","from":[10,10],"to":[{{to}},20]}"""),
            Gen.Select(Gen.Int[0, 3], Gen.Int[500, 700], (spot, mm) => $$"""{"kind":"length","spot":"U{{spot}}","what":"width","mm":{{mm / 100}}.{{mm % 100:00}},"u_mm":0.02}"""),
            Gen.Int[5, 30].Select(mm => Scale.Replace("\"length_mm\":10", $"\"length_mm\":{mm}", StringComparison.Ordinal)),
            Gen.Select(Gen.Int[0, 3], Gen.Int[0, 2].Select(i => new[] { "ZX52832", "QB2?075", "5282" }[i]), (spot, mark) => $$"""{"kind":"mark","spot":"U{{spot}}","lines":["{{mark}}"]}"""),
            Gen.Select(Gen.Int[0, 3], Gen.Int[3, 6], (spot, mm) => $$"""{"kind":"body","spot":"U{{spot}}","mm":[{{mm}},{{mm}}],"u_mm":0.05}"""),
            Gen.Int[0, 3].Select(spot => $$$"""{"kind":"reckon","reckoning":"R{{{spot}}}","calculation":"trace_resistance","inputs":{"length":{"from":"length:U{{{spot}}}:width"},"width":"0.2 mm","thickness":"18 µm"}}"""));
        Gen.Select(line.Array[1, 12], Gen.Int[0, 100]).Sample(
            (lines, undo) =>
            {
                using var bench = new Bench();
                bench.Picture("p.png");
                var ids = new List<string>();
                foreach (var each in lines)
                {
                    ids.Add(bench.Note(each)[0].Id.Hex);
                    Everything(bench.Model);
                }

                bench.Note($$"""{"kind":"undo","target":"{{ids[undo % ids.Count]}}"}""");
                Assert.Equal(Everything(bench.Rebuilt()), Everything(bench.Model));
            },
            iter: 60);
    }

    private static Bench Begun(params string[] lines)
    {
        var bench = new Bench();
        bench.Picture("p.png");
        if (lines.Length > 0) bench.Note(lines);
        return bench;
    }

    private static string Everything(DossierModel model) => string.Join('\n', Enumerable.Range(0, 4).SelectMany(i => new[] { $"length:U{i}:width", $"part:U{i}", $"R{i}" }).Select(reference =>
    {
        var value = model.Value(reference);
        return $"{reference} {value.Name} {value.Probability:R} {value.Number?.Value:R} {value.Number?.U:R} {value.Low:R} {value.High:R} {value.Grade} {value.Missing} {value.RestsOn}";
    }));

    // The three made-up parts of the bench are 6, 5 and 3 mm long.
    [Fact]
    public void A_long_side_alone_speaks_and_a_length_that_may_be_either_side_does_not()
    {
        using var bench = new Bench();
        bench.Note("""{"kind":"length","spot":"U1","what":"long side","mm":5.0,"u_mm":0.02}""", """{"kind":"length","spot":"U2","what":"length","mm":5.0,"u_mm":0.02}""");
        Assert.Equal("5.000 ± 0.020 mm", Assert.Single(bench.Model.Identity("U1").Evidence.Told, told => told.Evidence == "long side").Says);
        Assert.Equal("ZX52810", bench.Model.Identity("U1").Local.Candidates[0].Part.Name);
        Assert.False(bench.Model.Identity("U2").Asked);
    }
}
