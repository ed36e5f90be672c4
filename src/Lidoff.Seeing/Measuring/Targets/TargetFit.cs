using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>
/// A flat grid with a lens laid through the places of a target by least squares: nine numbers with their covariance, places that do not
/// belong left out. A dot's place is that of its ellipse, and is compared with where that should lie.
/// </summary>
internal sealed class TargetFit
{
    private const int Unknowns = 9;
    private const int Rounds = 30;

    // Corners and edges are seldom placed better than this, whatever their scatter says: pixels, compression and light pull on them, px of the picture that was looked at.
    private const double FinestPx = 0.02;

    // Beyond so many standard deviations a place is another thing: one in a thousand would be by chance.
    private const double FarOff = 4;

    // No lens of a bench bends more than a few tenths at the edge of the picture: keeps a small target from inventing one.
    private const double BendPrior = 0.1;

    private TargetFit(TargetLens lens, IReadOnlyList<TargetPlace> places, IReadOnlyList<(double X, double Y)> rests, double sdPx, double[,] covariance) =>
        (Lens, Places, Rests, SdPx, Covariance) = (lens, places, rests, sdPx, covariance);

    /// <summary>The grid and the lens.</summary>
    public TargetLens Lens { get; }

    /// <summary>Places that belong to it.</summary>
    public IReadOnlyList<TargetPlace> Places { get; }

    /// <summary>What is left at each, straightened, in half long sides.</summary>
    public IReadOnlyList<(double X, double Y)> Rests { get; }

    /// <summary>Standard deviation of each coordinate of a place about the fit, px.</summary>
    public double SdPx { get; }

    /// <summary>Covariance of the homography's eight numbers and the bend, in that order.</summary>
    public double[,] Covariance { get; }

    /// <summary>Standard uncertainty of the bend.</summary>
    public double BendU => Math.Sqrt(Covariance[8, 8]);

    /// <summary>Fits; null where too few places belong to one grid.</summary>
    /// <param name="places">Places with column and row.</param>
    /// <param name="radiusPx">Radius of the dots, px; 0 for corners.</param>
    /// <param name="frame">The picture.</param>
    /// <param name="pxPerPx">px of the picture for one of what was looked at.</param>
    /// <param name="least">Fewest places.</param>
    public static TargetFit? Of(IReadOnlyList<TargetPlace> places, double radiusPx, PictureFrame frame, double pxPerPx, int least)
    {
        var kept = places;
        var half = Math.Max(frame.Width, frame.Height) / 2.0;
        for (var pass = 0; ; pass++)
        {
            if (kept.Count < least) return null;
            var lens = Start(kept, frame);
            var steps = radiusPx > 0 ? radiusPx / Median([.. kept.Select(place => lens.PxPerStep(place.Column, place.Row))]) / lens.Span : 0;
            (lens, var information) = Descend(lens, kept, steps);
            var rests = kept.Select(place => Rest(lens, place, steps)).ToList();
            var degrees = (2 * kept.Count) - Unknowns;
            var sd = Math.Max(FinestPx * pxPerPx / half, Math.Sqrt(rests.Sum(rest => (rest.X * rest.X) + (rest.Y * rest.Y)) / degrees));
            // The median of a two-dimensional normal distance is 1.1774 standard deviations of one coordinate.
            var typical = Math.Max(2 * FinestPx * pxPerPx / half, Median([.. rests.Select(rest => Math.Sqrt((rest.X * rest.X) + (rest.Y * rest.Y)))]) / 1.1774);
            var near = kept.Where((_, i) => Math.Sqrt((rests[i].X * rests[i].X) + (rests[i].Y * rests[i].Y)) < FarOff * typical).ToList();
            if (near.Count == kept.Count || pass == 4)
            {
                if (PositiveMatrix.Factor(information) is not { } factor) return null;
                var covariance = PositiveMatrix.Inverse(factor);
                for (var i = 0; i < Unknowns; i++) for (var j = 0; j < Unknowns; j++) covariance[i, j] *= sd * sd;
                return new(lens, kept, rests, sd * half, covariance);
            }

            kept = near;
        }
    }

    private static (double X, double Y) Rest(TargetLens lens, TargetPlace place, double radius)
    {
        var (g, k) = lens.Grid(place.Column, place.Row);
        (g, k) = lens.EllipseMiddle(g, k, radius);
        var (x, y) = lens.Shows(g, k);
        var (sx, sy) = lens.Straight(place.At);
        return (sx - x, sy - y);
    }

    /// <summary>An affine map through the places.</summary>
    private static TargetLens Start(IReadOnlyList<TargetPlace> places, PictureFrame frame)
    {
        var middle = (places.Average(place => (double)place.Column), places.Average(place => (double)place.Row));
        var span = Math.Max(1, places.Max(place => Math.Max(Math.Abs(place.Column - middle.Item1), Math.Abs(place.Row - middle.Item2))));
        var lens = new TargetLens([1, 0, 0, 0, 1, 0, 0, 0], 0, middle, span, frame);
        var (normal, x, y) = (new double[3, 3], new double[3], new double[3]);
        foreach (var place in places)
        {
            var (g, k) = lens.Grid(place.Column, place.Row);
            var (sx, sy) = lens.Seen(place.At);
            ReadOnlySpan<double> row = [g, k, 1];
            for (var i = 0; i < 3; i++)
            {
                (x[i], y[i]) = (x[i] + (row[i] * sx), y[i] + (row[i] * sy));
                for (var j = 0; j < 3; j++) normal[i, j] += row[i] * row[j];
            }
        }

        var factor = PositiveMatrix.Factor(normal);
        if (factor is null) return lens;
        var (ax, ay) = (PositiveMatrix.Solve(factor, x), PositiveMatrix.Solve(factor, y));
        return lens with { H = [.. ax, .. ay, 0, 0] };
    }

    /// <summary>Damped least squares (Levenberg and Marquardt), and the information per unit variance at its end.</summary>
    private static (TargetLens Lens, double[,] Information) Descend(TargetLens lens, IReadOnlyList<TargetPlace> places, double radius)
    {
        var damping = 1e-4;
        var misfit = Misfit(lens, places, radius);
        var information = new double[Unknowns, Unknowns];
        // The prior on the bend weighs as against places a thousandth of the picture off.
        const double prior = 1e-6 / (BendPrior * BendPrior);
        for (var round = 0; round < Rounds; round++)
        {
            (information, var gradient) = Normal(lens, places, radius);
            information[8, 8] += prior;
            gradient[8] += prior * lens.Bend;
            var damped = (double[,])information.Clone();
            for (var i = 0; i < Unknowns; i++) damped[i, i] *= 1 + damping;
            if (PositiveMatrix.Factor(damped) is not { } factor) break;
            var step = PositiveMatrix.Solve(factor, gradient);
            var next = lens with { H = [.. lens.H.Select((h, i) => h - step[i])], Bend = lens.Bend - step[8] };
            var nextMisfit = Misfit(next, places, radius);
            if (nextMisfit < misfit)
            {
                var settled = misfit - nextMisfit < 1e-9 * misfit;
                (lens, misfit, damping) = (next, nextMisfit, damping / 10);
                if (settled) break;
            }
            else
            {
                damping *= 10;
                if (damping > 1e8) break;
            }
        }

        return (lens, information);

        static double Misfit(TargetLens lens, IReadOnlyList<TargetPlace> places, double radius)
        {
            var sum = prior * lens.Bend * lens.Bend;
            foreach (var place in places)
            {
                var (x, y) = Rest(lens, place, radius);
                sum += (x * x) + (y * y);
            }

            return double.IsFinite(sum) ? sum : double.PositiveInfinity;
        }
    }

    private static (double[,] Information, double[] Gradient) Normal(TargetLens lens, IReadOnlyList<TargetPlace> places, double radius)
    {
        var (information, gradient) = (new double[Unknowns, Unknowns], new double[Unknowns]);
        Span<double> dx = stackalloc double[Unknowns], dy = stackalloc double[Unknowns];
        foreach (var place in places)
        {
            var (g, k) = lens.Grid(place.Column, place.Row);
            (g, k) = lens.EllipseMiddle(g, k, radius);
            var (x, y) = lens.Shows(g, k);
            var w = (lens.H[6] * g) + (lens.H[7] * k) + 1;
            var (sx, sy) = lens.Seen(place.At);
            var r2 = (sx * sx) + (sy * sy);
            var (restX, restY) = ((sx * (1 + (lens.Bend * r2))) - x, (sy * (1 + (lens.Bend * r2))) - y);
            // Slopes of what is left; the ellipse's own shift changes too little to count.
            dx.Clear();
            dy.Clear();
            (dx[0], dx[1], dx[2]) = (-g / w, -k / w, -1 / w);
            (dy[3], dy[4], dy[5]) = (-g / w, -k / w, -1 / w);
            (dx[6], dx[7], dy[6], dy[7]) = (x * g / w, x * k / w, y * g / w, y * k / w);
            (dx[8], dy[8]) = (sx * r2, sy * r2);
            for (var i = 0; i < Unknowns; i++)
            {
                gradient[i] += (dx[i] * restX) + (dy[i] * restY);
                for (var j = 0; j < Unknowns; j++) information[i, j] += (dx[i] * dx[j]) + (dy[i] * dy[j]);
            }
        }

        return (information, gradient);
    }

    private static double Median(List<double> values)
    {
        values.Sort();
        return values[values.Count / 2];
    }
}
