using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;

namespace Lidoff.Weighing.Tests.Modelling;

public sealed class ComposedTests
{
    private const string Scale = """{"kind":"scale","picture":"p.png","from":[0,500],"to":[1000,500],"length_mm":10,"u_mm":0.01}""";
    private const string InMade = """{"kind":"length","picture":"made.png","spot":"U1","what":"width","from":[400,300],"to":[1000,300]}""";

    // Taken square the length is pixels over scale and nothing else. Cameras that may have leaned come in pairs, one to each side, which move it
    // by as much up as down; what they leave is of second order, 2 in 10,000 of it. (Measured: 1.2 in 10,000 at most.)
    private const double Leaning = 2e-4;

    [Fact]
    public void A_picture_in_the_geometry_of_its_first_input_has_that_ones_scale_until_it_has_its_own()
    {
        using var bench = Begun(Made("""[300,-20]"""), InMade);
        var value = bench.Model.Value("length:U1:width");
        // 600 px at 100 px/mm, by the known length of p.png.
        Assert.Equal(6.0, value.Number!.Value * 1e3, 6 * Leaning);
        Assert.Equal("clicked in made.png, scale from 1 known length of the picture it was made of", bench.Model.Length("U1", "width").Readings[0].How);
        var scale = bench.Model.Scale(Hash("made.png"));
        Assert.Equal((Hash("p.png"), 300.0, 480.0, 1300.0), (scale.From, scale.References[0].Value.Reference.From.X, scale.References[0].Value.Reference.From.Y, scale.References[0].Value.Reference.To.X));
        bench.Note("""{"kind":"scale","picture":"made.png","from":[0,500],"to":[1000,500],"length_mm":20}""");
        Assert.Equal(12.0, bench.Model.Value("length:U1:width").Number!.Value * 1e3, 12 * Leaning);
        Assert.Equal("", bench.Model.Scale(Hash("made.png")).From);
    }

    [Fact]
    public void A_length_clicked_in_both_is_one_line_of_evidence()
    {
        using var bench = Begun(Made("""[0,0]"""), InMade, InMade.Replace("made.png", "p.png", StringComparison.Ordinal));
        Assert.Equal(2, bench.Model.Length("U1", "width").Readings.Count);
        Assert.Equal(Grade.E2, bench.Model.Value("length:U1:width").Grade);
    }

    [Fact]
    public void A_geometry_of_its_own_has_no_scale_and_a_ring_of_pictures_has_an_end()
    {
        using var bench = Begun(Made(null), InMade);
        Assert.Null(bench.Model.Value("length:U1:width").Number);
        using var ring = Begun(
            Made("""[1,1]""", "q.png"),
            $$"""{"kind":"composed","picture":"{{Hash("q.png")}}","method":"average","inputs":["{{Hash("made.png")}}","x"],"settings":"s","program":"p","first_at":[1,1]}""",
            InMade);
        Assert.Null(ring.Model.Value("length:U1:width").Number);
    }

    [Fact]
    public void The_known_length_of_the_first_counts_once_on_a_board()
    {
        using var bench = Begun(Made("""[0,0]"""));
        var marks = new[] { ("H1", 100, 100), ("H2", 1800, 120), ("H3", 1700, 900), ("H4", 150, 880) };
        foreach (var picture in new[] { "p.png", "made.png" })
        {
            foreach (var (name, x, y) in marks) bench.Note($$"""{"kind":"landmark","landmark":"{{name}}","picture":"{{picture}}","point":[{{x}},{{y}}]}""");
        }

        Assert.Single(bench.Model.Board(Hash("p.png"))!.RestsOn.Intersect(bench.Model.Scale(Hash("p.png")).References.Select(each => each.Id)));
        Assert.Equal(Hash("p.png"), bench.Model.Scale(Hash("made.png")).From);
    }

    private static string Made(string? firstAt, string first = "p.png") =>
        $$"""{"kind":"composed","picture":"{{Hash("made.png")}}","method":"stack","inputs":["{{Hash(first)}}","{{Hash("q.png")}}"],"settings":"s","program":"p"{{(firstAt is null ? "" : ",\"first_at\":" + firstAt)}}}""";

    private static string Hash(string name) => EntryCodec.Hash(Encoding.UTF8.GetBytes(name));

    private static Bench Begun(params string[] lines)
    {
        var bench = new Bench();
        foreach (var name in new[] { "p.png", "q.png", "made.png" }) bench.Picture(name);
        bench.Note([Scale, .. lines]);
        return bench;
    }
}
