using CsCheck;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Evidence.Tests.Pictures;

public sealed class MapFitTests
{
    private static readonly PicturePoint[] UnitSquare = [new(0, 0), new(1, 0), new(1, 1), new(0, 1)];

    private static readonly Gen<double> Jog = Gen.Double[-0.3, 0.3];

    // Corners of a square of 1000, each moved by up to 300: always convex, never crossed, never flat.
    private static readonly Gen<PicturePoint[]> Quads = Corners(0.99);

    // Corners moved by up to 100: a view so mild that its horizon stays outside everything that is mapped here. (Two strong views
    // one after the other can put the horizon through the grid, and then no camera could have seen all of it.)
    private static readonly Gen<PicturePoint[]> MildQuads = Corners(0.33);

    private static Gen<PicturePoint[]> Corners(double share) => Jog.Array[8].Select(j => UnitSquare
        .Select((p, i) => new PicturePoint(500 + (1000 * (p.X + (j[2 * i] * share))), 200 + (1000 * (p.Y + (j[(2 * i) + 1] * share)))))
        .ToArray());

    /// <summary>
    /// The closed form for a unit square onto a quadrilateral: P. Heckbert, "Fundamentals of Texture Mapping and Image
    /// Warping" (Master's thesis, 1989), section 2.2.3; written down here from memory of it.
    /// </summary>
    [Fact]
    public void Four_points_give_the_closed_form() => Quads.Sample(
        q =>
        {
            var fit = MapFit.Homography("square", "quad", [.. UnitSquare.Zip(q, (a, b) => new PointPair(a, b))]).Value;
            var (dx1, dx2, sx) = (q[1].X - q[2].X, q[3].X - q[2].X, q[0].X - q[1].X + q[2].X - q[3].X);
            var (dy1, dy2, sy) = (q[1].Y - q[2].Y, q[3].Y - q[2].Y, q[0].Y - q[1].Y + q[2].Y - q[3].Y);
            var d = (dx1 * dy2) - (dx2 * dy1);
            var g = ((sx * dy2) - (dx2 * sy)) / d;
            var h = ((dx1 * sy) - (sx * dy1)) / d;
            double[] heckbert = [q[1].X - q[0].X + (g * q[1].X), q[3].X - q[0].X + (h * q[3].X), q[0].X,
                q[1].Y - q[0].Y + (g * q[1].Y), q[3].Y - q[0].Y + (h * q[3].Y), q[0].Y, g, h, 1];
            var m = fit.Map.Matrix;
            double[] ours = [m.A, m.B, m.C, m.D, m.E, m.F, m.G, m.H, m.I];
            return fit.Freedom == 0 && fit.CoordinateU is null
                && ours.Zip(heckbert).All(p => Math.Abs((p.First / m.I) - p.Second) <= 1e-8 * (1 + Math.Abs(p.Second)));
        },
        iter: 300);

    /// <summary>Cross-ratios of four points on a line outlast any view (projective geometry's own invariant).</summary>
    [Fact]
    public void A_ruler_in_perspective_keeps_its_cross_ratio() => Gen.Select(MildQuads, MildQuads).Sample(
        (from, to) =>
        {
            var map = MapFit.Homography("a", "b", [.. from.Zip(to, (a, b) => new PointPair(a, b))]).Value.Map;
            double[] marks = [0, 1, 2, 4];
            var seen = marks.Select(t => map.Map(new(700 + (100 * t), 500 + (50 * t)))).ToList();
            double D(int i, int j) => seen[i].DistanceTo(seen[j]);
            // (AC·BD)/(BC·AD) of 0, 1, 2, 4 is (2·3)/(1·4).
            return Math.Abs((D(0, 2) * D(1, 3) / (D(1, 2) * D(0, 3))) - 1.5) < 1e-8;
        },
        iter: 300);

    [Fact]
    public void Many_points_without_error_give_the_map_back() => Gen.Select(MildQuads, MildQuads).Sample(
        (from, to) =>
        {
            var map = MapFit.Homography("a", "b", [.. from.Zip(to, (a, b) => new PointPair(a, b))]).Value.Map;
            var pairs = Grid().Select(p => new PointPair(p, map.Map(p))).ToList();
            var again = MapFit.Homography("a", "b", pairs).Value;
            return again.Residuals.Max() < 1e-7 && again.Freedom == 24 && again.Map.Map(new(777, 333)).DistanceTo(map.Map(new(777, 333))) < 1e-7;
        },
        iter: 100);

    [Fact]
    public void Least_squares_leave_no_better_map_nearby()
    {
        var pairs = Grid().Select((p, i) => new PointPair(p, new((0.5 * p.X) + Noise(i), (0.4 * p.Y) + Noise(i + 31)))).ToList();
        var fit = MapFit.Homography("a", "b", pairs).Value;
        double Cost(Projective map) => pairs.Sum(p => Square(map.Map(p.From).DistanceTo(p.To)));
        var best = Cost(fit.Map);
        Assert.InRange(fit.CoordinateU!.Value, 0.3, 1.2);
        var m = fit.Map.Matrix;
        foreach (var step in new[] { 1e-4, -1e-4 })
        {
            Projective[] near =
            [
                new("a", "b", m with { A = m.A * (1 + step) }), new("a", "b", m with { C = m.C + step }), new("a", "b", m with { E = m.E * (1 + step) }),
                new("a", "b", m with { G = m.G + (step * 1e-3) }), new("a", "b", m with { H = m.H + (step * 1e-3) }), new("a", "b", m with { D = m.D + step }),
            ];
            Assert.All(near, map => Assert.True(Cost(map) > best));
        }
    }

    [Fact]
    public void An_affine_fit_is_the_regression_line_of_each_coordinate()
    {
        // By hand: on a balanced square the normal equations separate. x' = 1, 3, 4, 2.4 has slope 3.5 - 1.7 = 1.8 along x
        // (mean right - mean left), 3.2 - 2 = 1.2 along y, and 2.6 - 0.9 - 0.6 = 1.1 at the corner; each is missed by 0.1.
        PicturePoint[] to = [new(1, 0), new(3, 0), new(4, 2), new(2.4, 2)];
        var fit = MapFit.Affine("a", "b", [.. UnitSquare.Zip(to, (a, b) => new PointPair(a, b))]).Value;
        var m = fit.Map.Matrix;
        Assert.Equal(1.8, m.A, 1e-12);
        Assert.Equal(1.2, m.B, 1e-12);
        Assert.Equal(1.1, m.C, 1e-12);
        Assert.Equal(2, m.E, 1e-12);
        Assert.Equal([0.1, 0.1, 0.1, 0.1], fit.Residuals.Select(r => Math.Round(r, 12)));
        Assert.Equal(2, fit.Freedom);
    }

    [Fact]
    public void Mirrored_sides_are_fitted_with_their_one_reflection()
    {
        var front = Grid().ToList();
        var fit = MapFit.Affine("back", "front", [.. front.Select(p => new PointPair(new(2000 - p.X, p.Y), p))]).Value;
        Assert.True(fit.Map.MirrorsAt(new(0, 0)));
        Assert.True(fit.Residuals.Max() < 1e-9);
    }

    [Fact]
    public void Too_few_points_are_refused() => Assert.Equal(
        "A view in perspective needs at least 4 points seen in both, and 3 were given.",
        Refusal(UnitSquare[..3], UnitSquare[..3]));

    [Fact]
    public void Points_on_one_line_are_refused_in_either_frame()
    {
        PicturePoint[] three = [new(0, 0), new(100, 100), new(200, 200.5), new(0, 200)];
        Assert.Equal("The points 1, 2 and 3 lie on one line, so they do not fix a view in perspective; add one well off that line.", Refusal(three, UnitSquare));
        Assert.Equal("The points 1, 2 and 3 lie on one line, so they do not fix a view in perspective; add one well off that line.", Refusal(UnitSquare, three));
        PicturePoint[] row = [.. Enumerable.Range(0, 6).Select(i => new PicturePoint(i, 2 * i)), new(9, 0)];
        Assert.StartsWith("The points 1, 2, 3, 4, 5 and 6 lie on one line", Refusal(row, row), StringComparison.Ordinal);
        var affine = MapFit.Affine("a", "b", [.. row[..4].Select(p => new PointPair(p, p))]);
        Assert.Equal("The points 1, 2, 3 and 4 lie on one line, so they do not fix a shift, scale and shear; add one well off that line.", affine.Faults[0].Say);
    }

    [Fact]
    public void Two_points_on_one_place_crossed_orders_and_no_numbers_are_refused()
    {
        Assert.Equal("Points 2 and 4 stand at the same place; each point must be a place of its own.", Refusal([new(0, 0), new(1, 0), new(1, 1), new(1, 0)], UnitSquare));
        Assert.Equal(
            "No view of a flat thing can show these points so; give them in the same order in both (around the outline, not across it).",
            Refusal(UnitSquare, [new(0, 0), new(1, 1), new(1, 0), new(0, 1)]));
        Assert.Equal("Point 3 has a coordinate that is not a number.", Refusal([new(0, 0), new(1, 0), new(double.NaN, 1), new(0, 1)], UnitSquare));
    }

    private static string Refusal(PicturePoint[] from, PicturePoint[] to) =>
        Assert.Single(MapFit.Homography("a", "b", [.. from.Zip(to, (a, b) => new PointPair(a, b))]).Faults).Say;

    private static IEnumerable<PicturePoint> Grid() =>
        from y in Enumerable.Range(0, 4) from x in Enumerable.Range(0, 4) select new PicturePoint(300 + (400 * x), 100 + (350 * y));

    // Fixed, patternless enough: the fractional parts of multiples of the golden ratio, in -1..1.
    private static double Noise(int i) => (2 * (((i + 1) * 0.6180339887498949) % 1)) - 1;

    private static double Square(double x) => x * x;
}
