using System.Globalization;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Rulers;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Tests.Measuring.Rulers;

/// <summary>Rulers found in whole pictures without being pointed at, and what only looks like one: drawn here and by the renderer, so that all of it is known.</summary>
public sealed class RulerFinderTests(ITestOutputHelper output)
{
    // As rulers are ruled: millimetres with fives and tens; half millimetres; an inch in sixteenths.
    private static readonly (double Tick, int[] Longer)[] Rulings = [(1, [5, 10]), (0.5, [2, 10, 20]), (1.5875, [2, 4, 8, 16])];

    [Fact]
    public void Most_rulers_are_found_at_any_turn_and_none_reads_wrong()
    {
        var (found, wrong, asked, told) = (0, 0, 0, 0);
        for (var i = 0; i < 18; i++)
        {
            var random = new Random(300 + i);
            var (tick, longer) = Rulings[i % 3];
            var (period, turn, lines) = (6 + (8 * random.NextDouble()), 180 * random.NextDouble(), i % 3 == 2 ? 70 : 61);
            if (i % 3 != 0) period = Math.Min(period, 9);
            var (picture, first, last) = Drawn(turn, period, lines, longer, grain: 2 + (3 * random.NextDouble()), seed: i);
            var rulers = RulerProposals.Of(picture);
            asked++;
            if (rulers.Count == 0) continue;
            found++;
            var best = rulers[0];
            if (best.TickMm is not null) told++;
            // Right where its px per mm is that of the drawing, within half a per cent (every second line of half millimetres is a ruler as well), and it lies along it.
            var right = (best.TickMm is { } read ? Math.Abs((best.PeriodPx / read * tick / period) - 1) < 0.005 : Math.Abs((best.PeriodPx / period) - Math.Round(best.PeriodPx / period)) < 0.01) && Beside(best, first, last) < 6 * period;
            if (!right || rulers.Count > 1) output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{i}: {tick} mm at {turn:0}°, {period:0.0} px: {string.Join("; ", rulers)}"));
            if (!right) wrong++;
        }

        output.WriteLine($"{found} of {asked} found, {told} with their unit, {wrong} wrong");
        // 18 found and 17 told; 14 and 11 before lines were counted from the middle of their row.
        Assert.InRange(found, 17, asked);
        Assert.InRange(told, 16, asked);
        Assert.Equal(0, wrong);
    }

    [Fact]
    public void The_renderers_ruler_beside_a_board_is_found_and_read()
    {
        foreach (var turn in new[] { 0.0, 8 })
        {
            var scene = Brindle.MainTop() with { RulerMm = 30, TurnDegrees = turn };
            var (from, to) = SceneTruth.Of(scene).Ruler!.Value;
            var ruler = Assert.Single(RulerProposals.Of(Grey(scene)));
            Assert.Equal(1, ruler.TickMm);
            Assert.Equal(from.DistanceTo(to) / 30, ruler.PeriodPx, 0.1);
        }
    }

    [Fact]
    public void Boards_without_a_ruler_have_none()
    {
        Assert.Empty(RulerProposals.Of(Grey(Brindle.MainTop() with { RulerMm = 0 })));
        Assert.Empty(RulerProposals.Of(Grey(Brindle.LampTop() with { RulerMm = 0 })));
    }

    [Fact]
    public void Pins_combs_cloth_and_print_are_no_rulers()
    {
        var (tried, wrong) = (0, 0);
        for (var i = 0; i < 6; i++)
        {
            var random = new Random(70 + i);
            var (period, turn) = (6 + (8 * random.NextDouble()), 180 * random.NextDouble());
            foreach (var kind in new[] { "pins", "cloth", "barcode", "stairs" })
            {
                tried++;
                var rulers = RulerProposals.Of(Lookalike(kind, turn, period, i));
                if (rulers.Count == 0) continue;
                wrong++;
                output.WriteLine($"{kind} {i}: {string.Join("; ", rulers)}");
            }
        }

        output.WriteLine($"{wrong} of {tried} taken for rulers");
        Assert.Equal(0, wrong);
    }

    private static double Beside(RulerProposal ruler, PicturePoint first, PicturePoint last)
    {
        var (dx, dy) = ((last.X - first.X) / first.DistanceTo(last), (last.Y - first.Y) / first.DistanceTo(last));
        return Math.Max(Math.Abs(((ruler.First.X - first.X) * dy) - ((ruler.First.Y - first.Y) * dx)), Math.Abs(((ruler.Last.X - first.X) * dy) - ((ruler.Last.Y - first.Y) * dx)));
    }

    /// <summary>A white ruler on a table of soft patches: lines 2.5 periods long, each longer one 1.6 more for every ruling it belongs to, numerals as blots behind the longest.</summary>
    private static (GreyPicture Picture, PicturePoint First, PicturePoint Last) Drawn(double turnDegrees, double period, int lines, int[] longer, double grain, int seed)
    {
        const int size = 760;
        var (sin, cos) = Math.SinCos(turnDegrees * Math.PI / 180);
        var half = (lines - 1) * period / 2;
        var values = new float[size * size];
        for (var i = 0; i < values.Length; i++)
        {
            var (px, py) = ((i % size) + 0.5 - (size / 2.0), (i / size) + 0.5 - (size / 2.0));
            var (x, y) = ((px * cos) + (py * sin) + half, (py * cos) - (px * sin));
            var value = 110 + (25 * Math.Sin(px / 37) * Math.Cos(py / 53));
            if (y > -period && y < 12 * period && x > -3 * period && x < (2 * half) + (3 * period))
            {
                var number = (int)Math.Round(x / period);
                var off = Math.Abs(x - (number * period));
                var length = period * (2.5 + (1.6 * longer.Count(every => number % every == 0)));
                var line = number >= 0 && number < lines && y >= 0 && y < length ? Math.Clamp(1.4 - off, 0, 1) : 0;
                var numeral = number >= 0 && number < lines && longer.All(every => number % every == 0) && y > length + 3 && y < length + (2 * period) && Math.Abs(Math.Sin(3.7 * x) + Math.Cos(2.9 * y)) > 0.7 && off < period ? 0.8 : 0;
                value = 215 - (165 * Math.Max(line, numeral));
            }

            values[i] = (float)Math.Clamp(value + (grain * Scatter.Normal(seed, i % size, i / size)), 0, 255);
        }

        PicturePoint At(double along) => new((size / 2.0) + ((along - half) * cos), (size / 2.0) + ((along - half) * sin));
        return (new(size, size, values, 1), At(0), At(2 * half));
    }

    private static GreyPicture Lookalike(string kind, double turnDegrees, double period, int seed)
    {
        const int size = 560;
        var (sin, cos) = Math.SinCos(turnDegrees * Math.PI / 180);
        var values = new float[size * size];
        for (var i = 0; i < values.Length; i++)
        {
            var (px, py) = ((i % size) + 0.5 - (size / 2.0), (i / size) + 0.5 - (size / 2.0));
            var (x, y) = ((px * cos) + (py * sin), (py * cos) - (px * sin));
            var number = (int)Math.Floor(x / period);
            var within = (x / period) - number;
            var value = kind switch
            {
                // Leads of a package of 60 pins, bright, with tracks that leave some of them.
                "pins" => Math.Abs(x) > 30 * period ? 70 : y is > 0 and < 30 && within is > 0.25 and < 0.75 ? 190 : y is >= 30 and < 75 && within is > 0.35 and < 0.65 && Scatter.Even(seed, number, 0) < 0.4 ? 120 : y is > -90 and <= 0 ? 40 : 70,
                // Threads under and over.
                "cloth" => 120 + (45 * Math.Sin(2 * Math.PI * x / period) * Math.Cos(2 * Math.PI * y / (1.3 * period))) + (20 * Math.Sin(2 * Math.PI * (x + y) / (5 * period))),
                // Bars as wide as chance has it.
                "barcode" => Math.Abs(x) < 30 * period && Math.Abs(y) < 60 ? Scatter.Even(seed, number, 3) < 0.5 ? 40 : 220 : 220,
                // Fins of a heat sink, all alike.
                _ => Math.Abs(y) < 200 ? within < 0.5 ? 60 : 170 : 100,
            };
            values[i] = (float)(value + (3 * Scatter.Normal(seed, i % size, i / size)));
        }

        return new(size, size, values, 1);
    }

    private static GreyPicture Grey(Scene scene)
    {
        var pixels = SceneRenderer.Render(scene).Pixels;
        return new(scene.Width, scene.Height, [.. Enumerable.Range(0, scene.Width * scene.Height).Select(i => ((299 * pixels[3 * i]) + (587 * pixels[(3 * i) + 1]) + (114 * pixels[(3 * i) + 2])) / 1000f)], 1);
    }
}
