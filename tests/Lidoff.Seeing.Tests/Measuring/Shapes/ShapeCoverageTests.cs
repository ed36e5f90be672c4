using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Tests.Measuring.Shapes;

/// <summary>
/// A hundred boards, each leaning another way, with five known places, and a hole, an arc, a corner, a cell, a row and a side on each clicked three
/// times by an unsteady hand: three hundred answers a shape, and the printed 90 % must be 90 %. Binomial, n = 300, p = 0.9: standard deviation
/// 0.0173, so 0.86 to 0.94 is 2.3 of them, once in fifty.
/// </summary>
public sealed class ShapeCoverageTests(ITestOutputHelper output)
{
    private const double Click = 0.8;
    private const int Boards = 100;
    private const int Hands = 3;

    // Shapes that hang on their own clicks hold what was promised (measured with three hundred boards: hole 0.900, arc 0.920, corner 0.880, row
    // 0.907). A cell and a long side hang on the scale, whose doubt allows for a bent lens, which none of these boards has: so they hold more often (0.943
    // and 0.957; where lenses are drawn too it is nine in ten, KnownPointCoverageTests). Three hands share one scale, so the lower bound is that of a hundred.
    private static readonly (string Name, double Truth, double Least, double Most)[] Asked =
    [
        ("hole", 4.0, 0.86, 0.94), ("arc", 9.0, 0.86, 0.96), ("corner", 90, 0.84, 0.94), ("row", 1.27, 0.86, 0.94),
        ("cell", 80, 0.9, 1), ("side", Math.Sqrt(250), 0.9, 1),
    ];

    [Fact]
    public void Ninety_per_cent_means_ninety_per_cent_for_every_shape()
    {
        var random = new Random(41);
        var held = new int[Asked.Length];
        for (var board = 0; board < Boards; board++)
        {
            var scene = new BenchScene(12 * random.NextDouble(), 360 * random.NextDouble(), 360 * random.NextDouble(), 1 + random.NextDouble(), 45, 0);
            PicturePoint At(double x, double y) => BenchScene.Clicked(random, scene.Show(x, y, 0), Click);
            var job = new MeasureJob
            {
                Image = "x",
                References = [],
                KnownPoints = [.. new[] { (-20.0, -15.0), (20, -15), (20, 15), (-20, 15), (0, 3) }.Select(at => new KnownPoint(At(at.Item1, at.Item2), at.Item1, at.Item2))],
                Targets = [.. Enumerable.Range(0, Hands).SelectMany(_ => Shapes(At))],
                ClickPx = Click,
            };
            var measured = Measurement.Run(job, new(BenchScene.Width, BenchScene.Height)).Value;
            for (var i = 0; i < measured.Count; i++)
            {
                var (low, high) = measured[i].Shape is { } shape ? (shape.Low, shape.High) : (measured[i].Length.Value.LowMm, measured[i].Length.Value.HighMm);
                var truth = Asked[i % Asked.Length].Truth;
                if (truth >= low && truth <= high) held[i % Asked.Length]++;
            }
        }

        var shares = held.Select(each => each / (double)(Boards * Hands)).ToList();
        output.WriteLine(string.Join(", ", Asked.Zip(shares, (asked, share) => $"{asked.Name} {share:0.000}")));
        Assert.All(Asked.Zip(shares), pair => Assert.InRange(pair.Second, pair.First.Least, pair.First.Most));
    }

    /// <summary>In the order of <see cref="Asked"/>. An arc is a third of a rim: short enough that errors of its centre and of its diameter go together.</summary>
    private static IEnumerable<AskedTarget> Shapes(Func<double, double, PicturePoint> at) =>
    [
        Shape("hole", ShapeKind.Circle, Enumerable.Range(0, 8).Select(k => at(12 + (2 * Math.Cos(k)), 8 + (2 * Math.Sin(k))))),
        Shape("arc", ShapeKind.Circle, Enumerable.Range(0, 9).Select(k => at(-10 + (4.5 * Math.Cos(0.26 * k)), -6 + (4.5 * Math.Sin(0.26 * k))))),
        Shape("corner", ShapeKind.Angle, [at(-10, 0), at(-10, 10), at(0, 10)]),
        Shape("row", ShapeKind.Pitch, Enumerable.Range(0, 9).Select(k => at(-18 + (1.27 * k), -10))),
        Shape("cell", ShapeKind.Area, [at(0, 0), at(10, 0), at(10, 8), at(0, 8)]),
        new("side", new TargetLength("side", at(-5, -12), at(10, -7))),
    ];

    private static AskedTarget Shape(string id, ShapeKind kind, IEnumerable<PicturePoint> points) => AskedTarget.Of(new(id, kind, [.. points]));
}
