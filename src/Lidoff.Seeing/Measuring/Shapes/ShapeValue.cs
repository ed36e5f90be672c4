using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Shapes;

/// <summary>What a shape comes to for places on a plane; not a number where they have none.</summary>
internal static class ShapeValue
{
    /// <summary>With which power of the scale it grows: 1 for lengths, 2 for areas, 0 for angles.</summary>
    public static int Power(ShapeKind kind) => kind switch { ShapeKind.Angle => 0, ShapeKind.Area => 2, _ => 1 };

    /// <summary>The value, in the unit of the places: diameter, pitch, degrees or area.</summary>
    public static double Of(ShapeKind kind, IReadOnlyList<(double X, double Y)> at) => kind switch
    {
        ShapeKind.Circle => Circle(at),
        ShapeKind.Pitch => Comb(at).Pitch,
        ShapeKind.Angle => Angle(at),
        _ => Area(at),
    };

    /// <summary>How the value moves with each place, by a step to each side as small as <paramref name="step"/>; zero where a step leaves no value.</summary>
    public static IReadOnlyList<(double X, double Y)> Slopes(ShapeKind kind, IReadOnlyList<(double X, double Y)> at, double step)
    {
        (double X, double Y)[] moved = [.. at];
        var slopes = new (double X, double Y)[at.Count];
        for (var i = 0; i < at.Count; i++)
        {
            double Slope(double x, double y)
            {
                moved[i] = (at[i].X + x, at[i].Y + y);
                var above = Of(kind, moved);
                moved[i] = (at[i].X - x, at[i].Y - y);
                var below = Of(kind, moved);
                moved[i] = at[i];
                return double.IsFinite(above) && double.IsFinite(below) ? (above - below) / (2 * step) : 0;
            }

            slopes[i] = (Slope(step, 0), Slope(0, step));
        }

        return slopes;
    }

    /// <summary>
    /// The pitch of a row and its gaps from first to last: places along the line through them are numbered by the usual step between
    /// neighbours, so that a lead left out is counted, and a straight line is laid through place against number.
    /// </summary>
    public static (double Pitch, int Gaps) Comb(IReadOnlyList<(double X, double Y)> at)
    {
        var along = Along(at).Order().ToList();
        var steps = along.Zip(along.Skip(1), (a, b) => b - a).Order().ToList();
        // The usual step: the median of those that are no more than half again the smallest half's middle one; a wider one skips a lead.
        var small = steps[(steps.Count - 1) / 4];
        var usual = steps.Where(step => step < 1.5 * small).ToList();
        if (!(small > 0)) return (double.NaN, 0);
        var pitch = usual.Average();
        var gaps = 0;
        // A second numbering with the first fit's step, so that a long row does not slip by the error of one step.
        for (var round = 0; round < 3; round++)
        {
            var numbers = along.Select(place => Math.Round((place - along[0]) / pitch)).ToList();
            var (meanN, meanP) = (numbers.Average(), along.Average());
            var (top, bottom) = (0.0, 0.0);
            for (var i = 0; i < numbers.Count; i++)
            {
                top += (numbers[i] - meanN) * (along[i] - meanP);
                bottom += (numbers[i] - meanN) * (numbers[i] - meanN);
            }

            if (bottom <= 0) return (double.NaN, 0);
            (pitch, gaps) = (top / bottom, (int)numbers[^1]);
        }

        return (pitch, gaps);
    }

    private static IEnumerable<double> Along(IReadOnlyList<(double X, double Y)> at)
    {
        var (mx, my) = (at.Average(p => p.X), at.Average(p => p.Y));
        var (xx, xy, yy) = (at.Sum(p => (p.X - mx) * (p.X - mx)), at.Sum(p => (p.X - mx) * (p.Y - my)), at.Sum(p => (p.Y - my) * (p.Y - my)));
        var angle = 0.5 * Elementary.Atan2(2 * xy, xx - yy);
        var (sin, cos) = (Elementary.Sin(angle), Elementary.Cos(angle));
        return at.Select(p => ((p.X - mx) * cos) + ((p.Y - my) * sin));
    }

    private static double Circle(IReadOnlyList<(double X, double Y)> at) => CircleThrough(at) is { } circle ? 2 * circle.Radius : double.NaN;

    /// <summary>The circle that lies closest to places; null where they have none.</summary>
    public static (double X, double Y, double Radius)? CircleThrough(IReadOnlyList<(double X, double Y)> at)
    {
        // Kåsa's linear fit as a start, then distances to the circle by Gauss and Newton: a short arc is not drawn in.
        var (mx, my) = (at.Average(p => p.X), at.Average(p => p.Y));
        var (xx, xy, yy, xz, yz) = (0.0, 0.0, 0.0, 0.0, 0.0);
        foreach (var p in at)
        {
            var (x, y) = (p.X - mx, p.Y - my);
            var z = (x * x) + (y * y);
            (xx, xy, yy, xz, yz) = (xx + (x * x), xy + (x * y), yy + (y * y), xz + (x * z), yz + (y * z));
        }

        var determinant = (xx * yy) - (xy * xy);
        // Places within a thousandth of their length of one line have no circle that anybody could click.
        if (determinant <= 1e-6 * (xx + yy) * (xx + yy)) return null;
        var (a, b) = (((xz * yy) - (yz * xy)) / (2 * determinant), ((yz * xx) - (xz * xy)) / (2 * determinant));
        var r = Math.Sqrt((a * a) + (b * b) + ((xx + yy) / at.Count));
        for (var round = 0; round < 8; round++)
        {
            var (information, right) = (new double[3, 3], new double[3]);
            foreach (var p in at)
            {
                var (x, y) = (p.X - mx - a, p.Y - my - b);
                var distance = Math.Sqrt((x * x) + (y * y));
                if (distance <= 0) return null;
                double[] slope = [-x / distance, -y / distance, -1];
                for (var i = 0; i < 3; i++)
                {
                    right[i] -= slope[i] * (distance - r);
                    for (var j = 0; j < 3; j++) information[i, j] += slope[i] * slope[j];
                }
            }

            if (PositiveMatrix.Factor(information) is not { } factor) break;
            var step = PositiveMatrix.Solve(factor, right);
            (a, b, r) = (a + step[0], b + step[1], r + step[2]);
        }

        return double.IsFinite(r) ? (mx + a, my + b, r) : null;
    }

    private static double Angle(IReadOnlyList<(double X, double Y)> at)
    {
        var (ax, ay) = (at[0].X - at[1].X, at[0].Y - at[1].Y);
        var (bx, by) = (at[2].X - at[1].X, at[2].Y - at[1].Y);
        return Math.Abs(Elementary.Atan2((ax * by) - (ay * bx), (ax * bx) + (ay * by))) * 180 / Math.PI;
    }

    private static double Area(IReadOnlyList<(double X, double Y)> at)
    {
        var sum = 0.0;
        for (var i = 0; i < at.Count; i++)
        {
            var (p, q) = (at[i], at[(i + 1) % at.Count]);
            sum += (p.X * q.Y) - (p.Y * q.X);
        }

        return Math.Abs(sum) / 2;
    }
}
