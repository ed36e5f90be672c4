using Lidoff.Numbers;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Bands;

/// <summary>Colours along the axis of a body, freed of highlight, of the shade across it and of light that changes along it, and the bands among them.</summary>
/// <param name="Ground">Colour of the body itself.</param>
/// <param name="Bands">Where each band lies along the axis (0 to 1, from and to) and its colour in the same light.</param>
internal sealed record BandProfile(LinearRgb Ground, IReadOnlyList<(double From, double To, LinearRgb Colour)> Bands)
{
    private const int Columns = 240;
    private const int Rows = 25;

    // Rows from the middle to that share of half the thickness; beyond it the body turns away.
    private const double Across = 0.6;

    // Rows that are that much brighter than the middle one are highlight, that much darker shade.
    private const double Highlight = 1.3;
    private const double Shade = 0.5;

    // Darker than that no camera tells.
    private const double Floor = 1e-4;

    // At the ends the body is round, and what stands behind shows.
    private const double Ends = 0.03;

    // In CIELAB: colours that near to the body's own are body, and a band differs by that much and by so many spreads of the body.
    private const double Near = 9;
    private const double LeastDifference = 8;
    private const double Spreads = 5;

    // Shares of the length: no band is narrower or wider.
    private const double Narrowest = 0.018;
    private const double Widest = 0.25;

    // Between two bands the difference falls to that share of the lesser one.
    private const double Valley = 0.6;

    /// <summary>Takes the profile of a body.</summary>
    public static BandProfile Of(ColourPyramid picture, PictureRegion body)
    {
        var columns = Flattened(picture.Sample(body with { Height = Across * body.Height }, Columns, Rows));
        var light = Light(columns);
        // Every column as it would look in the light of the middle.
        var even = columns.Select((colour, i) => colour.Times(light[Columns / 2].R / light[i].R, light[Columns / 2].G / light[i].G, light[Columns / 2].B / light[i].B)).ToArray();
        var ground = light[Columns / 2];
        var off = even.Select(colour => Difference(colour, ground)).ToArray();
        var grain = AxialBody.Median(off.Where(d => d < Near).DefaultIfEmpty(1));
        var least = Math.Max(LeastDifference, Spreads * grain);
        return new(ground, [.. Runs(off, least).Select(run => ((double)run.From / Columns, (run.To + 1.0) / Columns, Colour(even, off, run)))]);
    }

    private static double Difference(LinearRgb one, LinearRgb other)
    {
        var (a, b) = (one.Lab(), other.Lab());
        return Math.Sqrt(((a.L - b.L) * (a.L - b.L)) + ((a.A - b.A) * (a.A - b.A)) + ((a.B - b.B) * (a.B - b.B)));
    }

    // One colour a column: the median of the rows, each freed of its own brightness.
    private static LinearRgb[] Flattened(LinearRgb[] samples)
    {
        // Above zero, so that black rows are as bright as one another.
        var rows = Enumerable.Range(0, Rows).Select(row => Math.Max(Floor, AxialBody.Median(Enumerable.Range(0, Columns).Select(column => samples[(row * Columns) + column].Y)))).ToArray();
        var middle = AxialBody.Median(rows);
        var kept = Enumerable.Range(0, Rows).Where(row => rows[row] <= Highlight * middle && rows[row] >= Shade * middle).ToList();
        return [.. Enumerable.Range(0, Columns).Select(column =>
        {
            double Of(Func<LinearRgb, double> channel) => AxialBody.Median(kept.Select(row => channel(samples[(row * Columns) + column]) * middle / rows[row]));
            return new LinearRgb(Of(c => c.R), Of(c => c.G), Of(c => c.B));
        })];
    }

    /// <summary>The body's own colour at every column: the commonest colour, followed by a parabola in the log of each channel so that light may change along it.</summary>
    private static LinearRgb[] Light(LinearRgb[] columns)
    {
        var inner = Enumerable.Range(0, Columns).Where(i => i >= Ends * Columns && i < (1 - Ends) * Columns).ToList();
        var labs = columns.Select(colour => colour.Lab()).ToArray();
        // Brightness counts half: light changes it along the body more than the hue.
        int Alike(int i) => inner.Count(j => Math.Sqrt((0.25 * (labs[i].L - labs[j].L) * (labs[i].L - labs[j].L)) + ((labs[i].A - labs[j].A) * (labs[i].A - labs[j].A)) + ((labs[i].B - labs[j].B) * (labs[i].B - labs[j].B))) < Near / 2);
        var most = inner.MaxBy(Alike);
        var light = Enumerable.Repeat(columns[most], Columns).ToArray();
        for (var round = 0; round < 6; round++)
        {
            // The first rounds take in what light may have changed.
            var near = round < 2 ? 1.6 * Near : Near;
            var own = inner.Where(i => Difference(columns[i], light[i]) < near).ToList();
            if (own.Count < 8) break;
            var (r, g, b) = (Parabola(own, i => columns[i].R), Parabola(own, i => columns[i].G), Parabola(own, i => columns[i].B));
            for (var i = 0; i < Columns; i++) light[i] = new(r(i), g(i), b(i));
        }

        return light;
    }

    // Least squares in the log, the quadratic term held down: where bands stand little of the body is seen.
    private static Func<int, double> Parabola(List<int> at, Func<int, double> value)
    {
        double X(int i) => ((i + 0.5) / Columns) - 0.5;
        var (n, mean) = ((double)at.Count, at.Average(i => Elementary.Log(Math.Max(Floor, value(i)))));
        double s1 = 0, s2 = 0, s3 = 0, s4 = 0, t1 = 0, t2 = 0;
        foreach (var i in at)
        {
            var (x, y) = (X(i), Elementary.Log(Math.Max(Floor, value(i))) - mean);
            s1 += x;
            s2 += x * x;
            s3 += x * x * x;
            s4 += x * x * x * x;
            t1 += x * y;
            t2 += x * x * y;
        }

        // A pull of so many columns towards none at all, as beliefs have it.
        var (a11, a12, a22) = (s2 - (s1 * s1 / n) + (0.002 * n), s3 - (s1 * s2 / n), s4 - (s2 * s2 / n) + (0.001 * n));
        var det = (a11 * a22) - (a12 * a12);
        var (slope, bend) = (((t1 * a22) - (t2 * a12)) / det, ((t2 * a11) - (t1 * a12)) / det);
        var level = mean - (((slope * s1) + (bend * s2)) / n);
        return i => Elementary.Exp(level + (slope * X(i)) + (bend * X(i) * X(i)));
    }

    private static List<(int From, int To)> Runs(double[] off, double least)
    {
        var runs = new List<(int From, int To)>();
        var (low, high) = ((int)(Ends * Columns), (int)((1 - Ends) * Columns) - 1);
        for (var i = low; i <= high; i++)
        {
            if (off[i] <= least) continue;
            var from = i;
            while (i < high && off[i + 1] > least) i++;
            // What runs into an end is no band but the end itself, unless it is as wide as bands are.
            foreach (var run in Split(off, from, i))
            {
                var share = (run.To - run.From + 1.0) / Columns;
                var atEnd = run.From == low || run.To == high;
                if (share >= (atEnd ? 2 * Narrowest : Narrowest) && share <= Widest) runs.Add(run);
            }
        }

        return runs;
    }

    // Two bands whose gap a blur has filled: the difference falls between them.
    private static IEnumerable<(int From, int To)> Split(double[] off, int from, int to)
    {
        var valley = -1;
        for (var i = from + 1; i < to; i++)
        {
            var (before, after) = (off[from..i].Max(), off[(i + 1)..(to + 1)].Max());
            if (off[i] < Valley * Math.Min(before, after) && (valley < 0 || off[i] < off[valley])) valley = i;
        }

        if (valley < 0) return [(from, to)];
        return Split(off, from, valley - 1).Concat(Split(off, valley + 1, to));
    }

    // The middle of a band, where least of the body is mixed in.
    private static LinearRgb Colour(LinearRgb[] even, double[] off, (int From, int To) run)
    {
        var count = run.To - run.From + 1;
        var inner = Enumerable.Range(run.From, count).OrderByDescending(i => off[i]).Take(Math.Max(1, (int)(0.4 * count))).ToList();
        return new(inner.Average(i => even[i].R), inner.Average(i => even[i].G), inner.Average(i => even[i].B));
    }
}
