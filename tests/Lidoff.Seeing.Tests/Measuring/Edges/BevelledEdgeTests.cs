using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Tests.Measuring.Edges;

/// <summary>
/// Bodies with rim, bevel, shadow, glare and leads: four and more parallel steps within a few pixels, and a click of 1 to 2 px at the one that is
/// meant. A 90 % interval that holds does so in 0.9 of independent cases, so that of n of them a share within 0.9 ± 2.58·√(0.09/n) is what chance leaves (binomial,
/// 99 %; Handbook of Statistical Methods, NIST, 7.2.4).
/// </summary>
public sealed class BevelledEdgeTests(ITestOutputHelper output)
{
    private const double Normal90 = 1.6449;
    private const int Bodies = 300;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Ends_of_lengths_hold_in_nine_of_ten_whichever_of_the_parallel_edges_is_meant(bool top)
    {
        var random = new Random(21);
        var (ends, lengths) = (new List<(double Error, double U, double Clicked, bool Moved)>(), new List<(double Error, double U, double Clicked, bool Moved)>());
        for (var i = 0; i < Bodies; i++)
        {
            var body = BevelledBody.Draw(random);
            var (truth, click) = (top ? body.Top : body.Outline, 1 + random.NextDouble());
            PicturePoint[] at = [.. truth.Select(end => end with { X = end.X + (click * BenchScene.Normal(random)) })];
            var fit = PictureEdges.Of(body.Field).Length(at[0], at[1], click);
            ends.Add((truth[0].X - fit.From.Point.X, fit.From.UPx, truth[0].X - at[0].X, fit.From.OnEdge));
            ends.Add((fit.To.Point.X - truth[1].X, fit.To.UPx, at[1].X - truth[1].X, fit.To.OnEdge));
            var real = truth[0].DistanceTo(truth[1]);
            lengths.Add((fit.From.Point.DistanceTo(fit.To.Point) - real, Math.Sqrt(2) * fit.EachPx, at[0].DistanceTo(at[1]) - real, fit.OnEdge));
        }

        // Measured, outline meant: ends held 0.92, the 88 moved ones 0.93 with a median error of 0.47 px against 1.22 px as clicked, lengths 0.89. The top's rim meant, which shows least:
        // ends 0.87, moved ones 0.61, lengths 0.86. Before rivals counted: 0.61 of all and 0.38 of the moved ones, 0.48 and 0.08 for the rim (another seed).
        Say("ends", ends);
        Say("moved", [.. ends.Where(end => end.Moved)]);
        Say("lengths", lengths);
        Holds(ends);
        Holds(lengths);
        Assert.True(Median(ends, end => end.Error) <= Median(ends, end => end.Clicked));
    }

    [Fact]
    public void Sides_of_bodies_are_no_worse_than_clicked_and_hold_in_eight_of_ten()
    {
        var random = new Random(22);
        var sides = new List<(double Error, double U, double Clicked, bool Moved)>();
        for (var i = 0; i < Bodies; i++)
        {
            var body = BevelledBody.Draw(random);
            var click = 1 + random.NextDouble();
            var (left, right) = (body.Outline[0], body.Outline[1]);
            PicturePoint[] corners = [body.At(left, 20), body.At(right, 20), body.At(right, 110), body.At(left, 110)];
            PicturePoint[] at = [.. corners.Select(corner => new PicturePoint(corner.X + (click * BenchScene.Normal(random)), corner.Y + (click * BenchScene.Normal(random))))];
            var fit = PictureEdges.Of(body.Field).Body(at, click);
            // The upper and the lower side of the drawn band have no edge.
            foreach (var k in new[] { 1, 3 })
            {
                var clicked = Off(Middle(at[k], at[(k + 1) % 4]), corners[k], corners[(k + 1) % 4]);
                sides.Add((clicked + fit.Sides[k].OffsetPx, fit.Sides[k].UPx, clicked, fit.Sides[k].OnEdge));
            }
        }

        Say("sides", sides);
        Say("moved", [.. sides.Where(side => side.Moved)]);
        // Measured: held 0.83 of all and 0.65 of the 192 moved ones (0.62 and 0.29 before rivals counted, by another seed), median error 0.64 px against 0.73 px as clicked. Fewer than nine in ten: a rim
        // or a shadow thinner than the blur is not seen, and a doubt that allowed for one at every side would be too large where there is none (a fifth of the blur: 0.86 here, 0.98 in BodyEdgeTests).
        Assert.True(Median(sides, side => side.Error) <= Median(sides, side => side.Clicked));
        Assert.InRange(Held(sides), 0.8, 0.93);
    }

    private static void Holds(List<(double Error, double U, double Clicked, bool Moved)> each)
    {
        var slack = 2.58 * Math.Sqrt(0.09 / each.Count);
        Assert.InRange(Held(each), 0.9 - slack, 0.9 + slack);
    }

    private void Say(string what, List<(double Error, double U, double Clicked, bool Moved)> each) => output.WriteLine(
        $"{what}: {each.Count}, held {Held(each):0.000}, median {Median(each, one => one.Error):0.00} px, clicked {Median(each, one => one.Clicked):0.00} px, u {Median(each, one => one.U):0.00} px");

    private static double Held(List<(double Error, double U, double Clicked, bool Moved)> each) => each.Count(one => Math.Abs(one.Error) < Normal90 * one.U) / (double)Math.Max(1, each.Count);

    private static double Median(List<(double Error, double U, double Clicked, bool Moved)> each, Func<(double Error, double U, double Clicked, bool Moved), double> of) =>
        each.Select(one => Math.Abs(of(one))).Order().ToList() is { Count: > 0 } sorted ? sorted[sorted.Count / 2] : 0;

    private static PicturePoint Middle(PicturePoint a, PicturePoint b) => new((a.X + b.X) / 2, (a.Y + b.Y) / 2);

    private static double Off(PicturePoint at, PicturePoint a, PicturePoint b) => (((at.X - a.X) * (b.Y - a.Y)) - ((at.Y - a.Y) * (b.X - a.X))) / a.DistanceTo(b);
}
