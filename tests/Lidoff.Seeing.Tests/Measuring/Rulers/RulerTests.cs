using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
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
        var reference = Whole(read.Job.References);
        Assert.Equal(30, reference.LengthMm);
        Assert.Equal(from.DistanceTo(to), reference.From.DistanceTo(reference.To), 0.4);
        Assert.InRange(reference.ClickPx!.Value, 0.01, 0.3);
        Assert.StartsWith("The ruler shows 30 gaps of 1 mm between its lines: 36", Assert.Single(read.Says), StringComparison.Ordinal);
    }

    [Theory]
    // Which lines are longer, as rulers are ruled: centimetres and their halves; the same with millimetres among half millimetres; an inch halved
    // down to its sixteenths, thirty-seconds and sixty-fourths (an inch is 25.4 mm). How many lines are seen, and how many px they lie apart.
    [InlineData(1, new[] { 10, 5 }, 80, 12)]
    [InlineData(1, new[] { 10, 5 }, 40, 24)]
    [InlineData(0.5, new[] { 20, 10, 2 }, 80, 12)]
    [InlineData(1.5875, new[] { 16, 8, 4, 2 }, 80, 12)]
    [InlineData(1.5875, new[] { 16, 8 }, 80, 12)]
    [InlineData(0.79375, new[] { 32, 16, 8, 4, 2 }, 160, 9)]
    [InlineData(0.396875, new[] { 64, 32, 16, 8, 4, 2 }, 300, 6)]
    public void Longer_lines_tell_the_unit(double tick, int[] longer, int lines, int period)
    {
        foreach (var row in new[] { new Ruled(lines, period, longer), new Ruled(lines, period, longer) { Turn = 3.5 }, new Ruled(lines, period, longer) { Worn = true } })
        {
            var read = Read(row);
            Assert.True(read.Ok, read.Ok ? "" : $"{row}: {read.Faults[0].Say}");
            var reference = Whole(read.Value.Job.References);
            Assert.Equal(tick, reference.LengthMm / Math.Round(reference.From.DistanceTo(reference.To) / period), tick * 1e-6);
            Assert.Equal(reference.LengthMm / tick * period, reference.From.DistanceTo(reference.To), 0.5);
        }
    }

    [Theory]
    // Alike; too short to tell an inch in sixteenths from the half of one in thirty-seconds; an inch in eighths.
    [InlineData(new int[0], 80, 12)]
    [InlineData(new[] { 16, 8, 4, 2 }, 40, 12)]
    [InlineData(new[] { 32, 16, 8, 4, 2 }, 80, 12)]
    [InlineData(new[] { 8, 4, 2 }, 80, 12)]
    public void Where_the_lines_leave_it_open_it_is_asked_for_and_answered_by_tick_mm(int[] longer, int lines, int period)
    {
        var row = new Ruled(lines, period, longer);
        Assert.Equal(
            $"“ruler[0].tick_mm”: The ruler's {lines} lines lie {period} px apart, but the longer ones among them do not tell whether that is 1 mm, 0.5 mm or 1/16, 1/32 or 1/64 in. "
            + "Give tick_mm: 1, 0.5, 1.5875, 0.79375 or 0.396875.",
            Assert.Single(Read(row).Faults).Say);
        Assert.Equal(0.5 * (lines - 1), Whole(Read(row, 0.5).Value.Job.References).LengthMm, 9);
    }

    [Fact]
    public void Where_no_lines_are_or_outside_the_picture_a_sentence_says_so()
    {
        Assert.StartsWith("“ruler[0]”: No evenly spaced lines", RulerReferences.Add(Job(new(new(20, 245), new(900, 245)), 1000), Row(12, [10]), new(1000, 250)).Faults[0].Say, StringComparison.Ordinal);
        Assert.StartsWith("“ruler[0]”: No evenly spaced lines", RulerReferences.Add(Job(new(new(20, 60), new(980, 60)), 1000), null, new(1000, 200)).Faults[0].Say, StringComparison.Ordinal);
        Assert.Equal("“ruler[0]” lies at (1200, 60), outside the picture of 1000 × 200 pixels.", RulerReferences.Add(Job(new(new(20, 60), new(1200, 60)), 1000), null, new(1000, 200)).Faults[0].Say);
    }

    // A ruler counts as its two halves, which meet at one of its lines.
    private static ReferenceLength Whole(IReadOnlyList<ReferenceLength> halves)
    {
        Assert.Equal(2, halves.Count);
        Assert.Equal((halves[0].To, halves[0].Ruler), (halves[1].From, halves[1].Ruler));
        return halves[0] with { To = halves[1].To, LengthMm = halves[0].LengthMm + halves[1].LengthMm };
    }

    private static MeasureJob Job(AskedRuler ruler, double width) => new()
    {
        Image = "x", References = [], Rulers = [ruler], Targets = [new("t", new TargetLength("t", new(10, 10), new(width / 2, 10)))],
    };

    /// <summary>A ruler as it lies: its lines, px from one to the next, every how many one is longer; turned by degrees; scratched, with faint lines and missing ones.</summary>
    private sealed record Ruled(int Lines, int Period, int[] Longer)
    {
        public double Turn { get; init; }

        public bool Worn { get; init; }
    }

    private static Outcome<(MeasureJob Job, IReadOnlyList<string> Says)> Read(Ruled row, double? tick = null)
    {
        var picture = Row(row);
        var (sin, cos) = (Math.Sin(row.Turn * Math.PI / 180), Math.Cos(row.Turn * Math.PI / 180));
        // Pointed along the middles of the short lines, from before the first line to behind the last.
        PicturePoint At(double along) => new(30 + (along * cos) - (20 * sin), 30 + (along * sin) + (20 * cos));
        return RulerReferences.Add(Job(new(At(0), At(row.Lines * row.Period), tick), picture.Grey!.Width), picture, new(picture.Grey.Width, picture.Grey.Height));
    }

    private static PictureLook Row(int period, int[] longer) => Row(new(940 / period, period, longer));

    /// <summary>Dark lines on light, 40 px long, half again as long for each entry of <see cref="Ruled.Longer"/> that divides their number.</summary>
    private static PictureLook Row(Ruled row)
    {
        var (sin, cos) = (Math.Sin(row.Turn * Math.PI / 180), Math.Cos(row.Turn * Math.PI / 180));
        var (width, height) = (60 + (row.Lines * row.Period), 250 + (int)(row.Lines * row.Period * Math.Abs(sin)));
        var values = new float[width * height];
        for (var i = 0; i < values.Length; i++)
        {
            var (dx, dy) = ((i % width) + 0.5 - 30, (i / width) + 0.5 - 30);
            var (x, y) = ((dx * cos) + (dy * sin), (dy * cos) - (dx * sin));
            var number = (int)Math.Floor(x / row.Period);
            var off = x - ((number + 0.5) * row.Period);
            var ink = 1.0;
            // One line in fourteen is gone, one in five is faint, and scratches run across.
            if (row.Worn) ink = Scatter.Even(61, number, 0) < 0.07 ? 0 : Scatter.Even(62, number, 0) < 0.2 ? 0.5 : 1;
            var length = 40 * (1 + (0.5 * row.Longer.Count(every => number % every == 0)));
            var line = number >= 0 && number < row.Lines && y >= 0 && y < length ? 170 * ink * Math.Clamp(1.6 - Math.Abs(off), 0, 1) : 0;
            var scratch = row.Worn && Math.Abs(((x + (3 * y)) % 331) - 160) < 2 ? 30 : 0;
            values[i] = (float)(220 - line - scratch + (3 * Scatter.Normal(63, i % width, i / width)));
        }

        return new(null, false) { Grey = new(width, height, values, 1) };
    }

    private static GreyPicture Grey(Scene scene)
    {
        var pixels = SceneRenderer.Render(scene).Pixels;
        return new(scene.Width, scene.Height, [.. Enumerable.Range(0, scene.Width * scene.Height).Select(i => ((299 * pixels[3 * i]) + (587 * pixels[(3 * i) + 1]) + (114 * pixels[(3 * i) + 2])) / 1000f)], 1);
    }
}
