using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Measuring.Rulers;

/// <summary>Rulers read from the picture, against the renderer that drew one and against rows drawn here.</summary>
public sealed class RulerTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(8)]
    public void A_millimetre_ruler_is_read_without_being_told_its_unit(double turn)
    {
        var scene = Brindle.MainTop() with { RulerMm = 30, TurnDegrees = turn };
        var (from, to) = SceneTruth.Of(scene).Ruler!.Value;
        // Pointed 0.7 mm below the tops of the lines, a little short of both ends.
        var aside = 0.7 * scene.PxPerMm;
        var (sin, cos) = (Math.Sin(turn * Math.PI / 180), Math.Cos(turn * Math.PI / 180));
        PicturePoint Inside(PicturePoint at, double along) => new(at.X + (along * cos) - (aside * sin), at.Y + (along * sin) + (aside * cos));
        var job = Job(new(Inside(from, -20), Inside(to, 20)), scene.Width);
        var read = RulerReferences.Add(job, new(null, false) { Grey = Grey(scene) }, new(scene.Width, scene.Height)).Value;
        var reference = Assert.Single(read.Job.References);
        Assert.Equal(30, reference.LengthMm);
        Assert.Equal(from.DistanceTo(to), reference.From.DistanceTo(reference.To), 0.4);
        Assert.InRange(reference.ClickPx!.Value, 0.01, 0.3);
        Assert.StartsWith("The ruler shows 30 gaps of 1 mm between its lines: 36", Assert.Single(read.Says), StringComparison.Ordinal);
    }

    [Theory]
    // Which lines are longer: every tenth and fifth; every second; every sixteenth, eighth, fourth and second.
    [InlineData(1, new[] { 10, 5 })]
    [InlineData(0.5, new[] { 20, 10, 2 })]
    [InlineData(1.5875, new[] { 16, 8 })]
    public void Longer_lines_tell_the_unit(double tick, int[] longer)
    {
        var read = RulerReferences.Add(Job(new(new(20, 60), new(980, 60)), 1000), Row(12, longer), new(1000, 200)).Value;
        Assert.Equal(tick, read.Job.References[0].LengthMm / Math.Round(read.Job.References[0].From.DistanceTo(read.Job.References[0].To) / 12), 6);
    }

    [Fact]
    public void Lines_all_alike_are_asked_about_and_answered_by_tick_mm()
    {
        var look = Row(12, []);
        Assert.Equal(
            "The ruler's 80 lines lie 12 px apart, but no longer ones among them tell whether that is 1 mm, 0.5 mm or 1/16 in. Give tick_mm: 1, 0.5 or 1.5875.",
            Assert.Single(RulerReferences.Add(Job(new(new(20, 60), new(980, 60)), 1000), look, new(1000, 200)).Faults).Say);
        Assert.Equal(39.5, RulerReferences.Add(Job(new(new(20, 60), new(980, 60), 0.5), 1000), look, new(1000, 200)).Value.Job.References[0].LengthMm, 9);
    }

    [Fact]
    public void Where_no_lines_are_or_outside_the_picture_a_sentence_says_so()
    {
        Assert.StartsWith("No evenly spaced lines", RulerReferences.Add(Job(new(new(20, 180), new(980, 180)), 1000), Row(12, [10]), new(1000, 200)).Faults[0].Say, StringComparison.Ordinal);
        Assert.StartsWith("No evenly spaced lines", RulerReferences.Add(Job(new(new(20, 60), new(980, 60)), 1000), null, new(1000, 200)).Faults[0].Say, StringComparison.Ordinal);
        Assert.Equal("“ruler[0]” lies at (1200, 60), outside the picture of 1000 × 200 pixels.", RulerReferences.Add(Job(new(new(20, 60), new(1200, 60)), 1000), null, new(1000, 200)).Faults[0].Say);
    }

    private static MeasureJob Job(AskedRuler ruler, double width) => new()
    {
        Image = "x", References = [], Rulers = [ruler], Targets = [new("t", new TargetLength("t", new(10, 10), new(width / 2, 10)))],
    };

    /// <summary>Dark lines on light from y = 40 on, 40 px long, half again as long for each entry of <paramref name="longer"/> that divides the number.</summary>
    private static PictureLook Row(int period, int[] longer)
    {
        var values = new float[1000 * 200];
        for (var i = 0; i < values.Length; i++)
        {
            var (x, y) = (i % 1000, i / 1000);
            var (number, off) = (x / period, (x % period) - (period / 2.0) + 0.5);
            var length = 40 * (1 + (0.5 * longer.Count(every => number % every == 0)));
            values[i] = (float)(220 - (y >= 40 && y < 40 + length ? 170 * Math.Clamp(2 - Math.Abs(off), 0, 1) : 0) + (4 * Math.Sin(i * 12.9898)));
        }

        return new(null, false) { Grey = new(1000, 200, values, 1) };
    }

    private static GreyPicture Grey(Scene scene)
    {
        var pixels = SceneRenderer.Render(scene).Pixels;
        return new(scene.Width, scene.Height, [.. Enumerable.Range(0, scene.Width * scene.Height).Select(i => ((299 * pixels[3 * i]) + (587 * pixels[(3 * i) + 1]) + (114 * pixels[(3 * i) + 2])) / 1000f)], 1);
    }
}
