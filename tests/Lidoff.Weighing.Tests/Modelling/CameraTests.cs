using System.Globalization;
using System.Text;
using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Tests.Modelling;

/// <summary>
/// A calibration belongs to camera and zoom: what a target in one picture tells of the lens counts in others with the same tags. Places come from the definition of the radial term
/// (one at r half long sides belongs at r·(1 + bend·r²)), in pictures of 2,000 × 1,000 px looked at squarely at 20 px/mm.
/// </summary>
public sealed class CameraTests
{
    private const double Bend = 0.05;

    private const string Tags = """{"kind":"picture","file":"grid.png","zoom":"2x","camera":"cam"}""";
    private const string SameTags = """{"kind":"picture","file":"p.png","zoom":"2x","camera":"cam"}""";

    // 90 mm across the middle, clicked to a tenth of a pixel.
    private static readonly string Wide = $$"""{"kind":"length","spot":"U1","what":"width","picture":"p.png","from":{{Show(-45, 0)}},"to":{{Show(45, 0)}},"click_u_px":0.1}""";

    [Fact]
    public void A_lens_counts_in_every_picture_of_its_camera_and_zoom_and_what_is_measured_rests_on_it()
    {
        using var bench = Begun(Known(1), Wide);
        // Without the lens the ends, at nine tenths of the way out, are four per cent off: 0.05 · 0.9².
        Assert.False(Math.Abs((Value(bench) / 90) - 1) < 0.02);
        bench.Note(Tags);
        var said = bench.Note(SameTags)[0];
        Assert.Equal(90, Value(bench), 90 * 0.006);
        var reading = Assert.Single(bench.Model.Length("U1", "width").Readings);
        Assert.Contains(bench.Model.Scale(Hash("grid.png")).References[0].Id, reading.Scales);
        Assert.Contains(said.Id, reading.Scales);
        Assert.DoesNotContain(reading.Warnings, warning => warning.Code == "reference-disagrees");
        // Another zoom is another lens; and the same whatever was known first.
        bench.Note("""{"kind":"picture","file":"p.png","zoom":"4x","camera":"cam"}""");
        Assert.False(Math.Abs((Value(bench) / 90) - 1) < 0.02);
        bench.Note(SameTags);
        Assert.Equal(Value(bench), bench.Rebuilt().Value("length:U1:width").Number!.Value * 1e3);
    }

    [Fact]
    public void A_picture_whose_scale_was_carried_over_has_the_lens_without_tags()
    {
        using var bench = Begun(Wide, $$"""{"kind":"scale","picture":"p.png","from":{{Show(-10, 0)}},"to":{{Show(10, 0)}},"length_mm":20,"u_mm":0.2,"click_u_px":0,"carried_from":"grid.png"}""");
        Assert.Equal(90, Value(bench), 90 * 0.006);
    }

    [Fact]
    public void A_scale_that_the_target_contradicts_is_said_until_the_zoom_has_a_tag_of_its_own()
    {
        // Twenty millimetres that show 15 % larger.
        using var bench = Begun(Known(1.15), Tags, SameTags, Wide);
        var warning = Assert.Single(bench.Model.Length("U1", "width").Readings[0].Warnings, each => each.Code == "reference-disagrees");
        Assert.Matches("^By its own known lengths the picture shows 1[23]\\.[0-9] % less of the board than “grid.png” does, of the same camera and zoom\\.", warning.Say);
        bench.Note("""{"kind":"picture","file":"p.png","zoom":"2.3x","camera":"cam"}""");
        Assert.DoesNotContain(bench.Model.Length("U1", "width").Readings[0].Warnings, each => each.Code == "reference-disagrees");
    }

    private static double Value(Bench bench) => bench.Model.Value("length:U1:width").Number!.Value * 1e3;

    private static string Hash(string name) => EntryCodec.Hash(Encoding.UTF8.GetBytes(name));

    private static string Known(double larger) => $$"""{"kind":"scale","picture":"p.png","from":{{Show(-10 * larger, 0)}},"to":{{Show(10 * larger, 0)}},"length_mm":20,"click_u_px":0.1}""";

    /// <summary>Both pictures, and a target of 6 × 4 dots, 15 mm apart, in the first.</summary>
    private static Bench Begun(params string[] lines)
    {
        var bench = new Bench();
        bench.Picture("grid.png");
        bench.Picture("p.png");
        var steps = Enumerable.Range(0, 24).Select(i => (C: i % 6, R: i / 6)).ToList();
        bench.Note($$"""{"kind":"scale","picture":"grid.png","pattern":{"kind":"dots","pitch_mm":15,"u_mm":0.015,"points":[{{string.Join(',', steps.Select(step => Show((15 * step.C) - 37.5, (15 * step.R) - 22.5)))}}],"steps":[{{string.Join(',', steps.Select(step => $"[{step.C},{step.R}]"))}}],"u_steps":[{{string.Join(',', steps.Select(_ => "0.0005"))}}],"found":24} }""");
        bench.Note(lines);
        return bench;
    }

    /// <summary>Where a place, mm from the middle, shows.</summary>
    private static string Show(double x, double y)
    {
        var straight = Math.Sqrt((x * x) + (y * y)) * 20 / 1000;
        var r = straight;
        for (var i = 0; i < 60; i++) r = straight / (1 + (Bend * r * r));
        var times = straight > 0 ? 20 * r / straight : 20;
        return string.Create(CultureInfo.InvariantCulture, $"[{1000 + (times * x):0.###},{500 + (times * y):0.###}]");
    }
}
