using Lidoff.Numbers;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards.Finding;

/// <summary>
/// The closed round edge around a place: along rays from it the steepest step is looked for, and an ellipse that is nearly a circle,
/// <c>ρ(φ) = r + a·cos φ + b·sin φ + c·cos 2φ + d·sin 2φ</c>, is laid through the steps by least squares with Tukey's weights. The place is
/// then moved by (a, b) and looked from again.
/// </summary>
/// <param name="X">Middle, px of the level.</param>
/// <param name="Y">Middle, px of the level.</param>
/// <param name="Radius">Mean radius, px of the level.</param>
/// <param name="U">Standard uncertainty of each coordinate of the middle, px of the level.</param>
/// <param name="Held">Share of the rays whose step lies on it.</param>
/// <param name="Rest">Root mean square of what is left at those, px of the level.</param>
/// <param name="Oval">Size of the second harmonic over the radius.</param>
/// <param name="Step">Median step across the edge, brightness a px of the level.</param>
/// <param name="Even">How even it is within and around, 0 to 1: the difference of both over itself and what they vary by. Letters and leads are not.</param>
internal sealed record RoundEdge(double X, double Y, double Radius, double U, double Held, double Rest, double Oval, double Step, double Even)
{
    private const int Unknowns = 5;
    private const int Coarse = 16;
    private const int Fine = 32;

    // Blurred grain makes steps of about one.
    private const float LeastStep = 1.5f;

    // Below this the middle of an edge is not known, however well its steps agree: lens, light and compression pull on it. A judgement.
    private const double FinestU = 0.02;

    private static readonly (double Cos, double Sin)[] Rays = [.. Enumerable.Range(0, Fine).Select(i => (Elementary.Cos(2 * Math.PI * i / Fine), Elementary.Sin(2 * Math.PI * i / Fine)))];

    /// <summary>Looks for it.</summary>
    /// <param name="level">The picture.</param>
    /// <param name="x">About its middle.</param>
    /// <param name="y">About its middle.</param>
    /// <param name="radius">About its radius.</param>
    /// <param name="dark">True for a disc darker than what is around it.</param>
    public static RoundEdge? Around(SmoothLevel level, double x, double y, double radius, bool dark)
    {
        var sign = dark ? 1f : -1f;
        Span<double> at = stackalloc double[Fine];
        Span<float> steps = stackalloc float[Fine];
        var found = Steps(level, x, y, 0.4 * radius, 1.75 * radius, sign, Fine / Coarse, at, steps);
        if (found < 0.7 * Coarse) return null;
        var middle = Median(at, steps, Fine / Coarse);
        var near = 0;
        for (var i = 0; i < Fine; i += Fine / Coarse) if (steps[i] > 0 && Math.Abs(at[i] - middle) < 0.4 * middle) near++;
        if (near < 0.62 * Coarse) return null;
        var (shape, reach) = (new double[] { middle, 0, 0, 0, 0 }, 0.45);
        RoundEdge? edge = null;
        for (var round = 0; round < 2; round++)
        {
            (x, y) = (x + shape[1], y + shape[2]);
            if (shape[0] < 1.2 || x < shape[0] || y < shape[0] || x > level.Width - shape[0] || y > level.Height - shape[0]) return null;
            found = Steps(level, x, y, (1 - reach) * shape[0], (1 + reach) * shape[0], sign, 1, at, steps);
            if (found < 0.62 * Fine) return null;
            if (Fit(x, y, shape[0], at, steps, out shape) is not { } next) return null;
            (edge, reach) = (next, 0.3);
        }

        return edge is null ? null : edge with { Even = Evenness(level, edge) };
    }

    private static double Evenness(SmoothLevel level, RoundEdge edge)
    {
        var (inner, outer) = (0.5 * edge.Radius, (1.35 * edge.Radius) + 1);
        var (within, around) = (new Scatterer(), new Scatterer());
        for (var i = 0; i < Fine; i += 2)
        {
            var (cos, sin) = Rays[i];
            within.Add(level.At(edge.X + (inner * cos), edge.Y + (inner * sin)));
            around.Add(level.At(edge.X + (outer * cos), edge.Y + (outer * sin)));
        }

        var apart = Math.Abs(within.Mean - around.Mean);
        // Faint ones come after plain ones; from thirty on all are plain.
        return apart / (apart + within.Deviation + around.Deviation + 1e-9) * Math.Min(1, 0.4 + (apart / 50));
    }

    private struct Scatterer
    {
        private double sum;
        private double squares;
        private int count;

        public readonly double Mean => sum / count;

        public readonly double Deviation => Math.Sqrt(Math.Max(0, (squares / count) - (Mean * Mean)));

        public void Add(double value) => (sum, squares, count) = (sum + value, squares + (value * value), count + 1);
    }

    /// <summary>The steepest step along each ray, and how many rays have one.</summary>
    private static int Steps(SmoothLevel level, double x, double y, double from, double to, float sign, int stride, Span<double> at, Span<float> steps)
    {
        const double by = 0.5;
        var count = Math.Min(96, (int)Math.Ceiling((to - from) / by) + 1);
        var wide = (to - from) / (count - 1);
        // A step is taken over a pixel either way: two samples of half a pixel, or one of a whole one where rays are long.
        var span = Math.Max(1, (int)Math.Round(1 / wide));
        Span<float> along = stackalloc float[count + (2 * span)];
        var found = 0;
        for (var i = 0; i < Fine; i += stride)
        {
            var (cos, sin) = Rays[i];
            for (var k = 0; k < along.Length; k++)
            {
                var rho = from + ((k - span) * wide);
                along[k] = level.At(x + (rho * cos), y + (rho * sin));
            }

            var (best, place) = (LeastStep * (float)(2 * span * wide), -1);
            for (var k = 0; k < count; k++)
            {
                var rise = sign * (along[k + (2 * span)] - along[k]);
                if (rise > best) (best, place) = (rise, k);
            }

            steps[i] = 0;
            if (place < 0) continue;
            found++;
            var off = 0.0;
            if (place > 0 && place < count - 1)
            {
                var (before, after) = (sign * (along[place - 1 + (2 * span)] - along[place - 1]), sign * (along[place + 1 + (2 * span)] - along[place + 1]));
                var bend = before - (2 * best) + after;
                if (bend < 0) off = Math.Clamp(0.5 * (before - after) / bend, -0.5, 0.5);
            }

            at[i] = from + ((place + off) * wide);
            steps[i] = best / (float)(2 * span * wide);
        }

        return found;
    }

    private static RoundEdge? Fit(double x, double y, double guess, ReadOnlySpan<double> at, ReadOnlySpan<float> steps, out double[] shape)
    {
        var usual = MedianStep(steps);
        shape = [guess, 0, 0, 0, 0];
        var width = Math.Max(0.6, 0.12 * guess);
        double[,]? factor = null;
        Span<double> row = stackalloc double[Unknowns];
        for (var round = 0; round < 4; round++)
        {
            var (square, right) = (new double[Unknowns, Unknowns], new double[Unknowns]);
            // Where a part covers some of the edge the second harmonic would swing: it is held near nothing, as a slant of 20° would have it.
            (square[3, 3], square[4, 4]) = (1 / (0.05 * guess * 0.05 * guess), 1 / (0.05 * guess * 0.05 * guess));
            for (var i = 0; i < Fine; i++)
            {
                if (steps[i] < 0.25f * usual) continue;
                Row(i, row);
                var share = Off(row, shape, at[i]) / (2.5 * width);
                if (share is <= -1 or >= 1) continue;
                var weight = (1 - (share * share)) * (1 - (share * share));
                for (var j = 0; j < Unknowns; j++)
                {
                    right[j] += weight * row[j] * at[i];
                    for (var k = 0; k < Unknowns; k++) square[j, k] += weight * row[j] * row[k];
                }
            }

            factor = PositiveMatrix.Factor(square);
            if (factor is null) return null;
            shape = PositiveMatrix.Solve(factor, right);
            width = Math.Max(0.25, 0.6 * width);
        }

        var (held, sum) = (0, 0.0);
        var limit = Math.Max(0.5, 0.09 * shape[0]);
        for (var i = 0; i < Fine; i++)
        {
            if (steps[i] < 0.25f * usual) continue;
            Row(i, row);
            var rest = Off(row, shape, at[i]);
            if (Math.Abs(rest) > limit) continue;
            (held, sum) = (held + 1, sum + (rest * rest));
        }

        if (held <= Unknowns || shape[0] <= 0) return null;
        var inverse = PositiveMatrix.Inverse(factor!);
        // Neighbouring rays meet the same grain, which a blur of σ makes alike over 2·σ·√π, four to five and a half pixels at the blurs looked through:
        // so much of the edge is one witness.
        var witnesses = Math.Min(1, 2 * Math.PI * shape[0] / 5 / Fine);
        var variance = sum / (held - Unknowns) * Math.Max(inverse[1, 1], inverse[2, 2]) / witnesses;
        var oval = Math.Sqrt((shape[3] * shape[3]) + (shape[4] * shape[4])) / shape[0];
        return new(x + shape[1], y + shape[2], shape[0], Math.Sqrt(variance + (FinestU * FinestU)), held / (double)Fine, Math.Sqrt(sum / held), oval, usual, 0);
    }

    private static void Row(int ray, Span<double> row)
    {
        var (cos, sin) = Rays[ray];
        (row[0], row[1], row[2], row[3], row[4]) = (1, cos, sin, (cos * cos) - (sin * sin), 2 * cos * sin);
    }

    private static double Off(ReadOnlySpan<double> row, double[] shape, double at)
    {
        for (var j = 0; j < Unknowns; j++) at -= row[j] * shape[j];
        return at;
    }

    private static double Median(ReadOnlySpan<double> at, ReadOnlySpan<float> steps, int stride)
    {
        Span<double> kept = stackalloc double[Fine];
        var count = 0;
        for (var i = 0; i < Fine; i += stride) if (steps[i] > 0) kept[count++] = at[i];
        kept[..count].Sort();
        return kept[count / 2];
    }

    private static float MedianStep(ReadOnlySpan<float> steps)
    {
        Span<float> kept = stackalloc float[Fine];
        var count = 0;
        foreach (var step in steps) if (step > 0) kept[count++] = step;
        kept[..count].Sort();
        return kept[count / 2];
    }
}
