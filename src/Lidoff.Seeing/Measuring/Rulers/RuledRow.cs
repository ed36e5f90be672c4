namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>
/// Lines along a row, each with its number, and the curve through them: evenly spaced on the ruler, they lie in the picture of it as a pinhole shows a straight line, x = (a + b·n)/(1 + c·n).
/// Places are in steps of the row.
/// </summary>
internal sealed class RuledRow
{
    // A line's ink, as a share of the deepest within so many periods: light falls off along a ruler.
    private const double LeastInk = 0.35;
    private const double LeastOfAll = 0.12;
    private const double Around = 5;

    // A line lies within so much of a period of where the ones before put it, and the period changes by so much from one to the next: half as much again over ten lines is a slant that nobody takes.
    private const double Reach = 0.3;
    private const double Follow = 0.25;
    private const double MostChange = 0.04;

    // Places from which lines are counted: one of them may be a scratch.
    private const int Starts = 5;

    // The curve is taken where it is that many times its own doubt, and lines off it by so many scatters and so much of a period are left out once.
    private const double Sure = 4;
    private const double MostOff = 4;
    private const double LeastOff = 0.1;

    // From one end to the other the period more than doubles.
    private const double MostBend = 0.4;

    private readonly double a;
    private readonly double b;
    private readonly double c;

    private RuledRow(List<(int Number, double Place)> lines, (double A, double B, double C) curve, double scatter)
    {
        (a, b, c) = curve;
        Numbers = [.. lines.Select(line => line.Number)];
        Scatter = scatter;
    }

    /// <summary>Numbers of the lines that were seen, in order.</summary>
    public IReadOnlyList<int> Numbers { get; }

    /// <summary>How many were seen.</summary>
    public int Count => Numbers.Count;

    /// <summary>Number of the first.</summary>
    public int First => Numbers[0];

    /// <summary>Number of the last.</summary>
    public int Last => Numbers[^1];

    /// <summary>Scatter of the lines about the curve.</summary>
    public double Scatter { get; }

    /// <summary>From one line to the next, on the average.</summary>
    public double Step => (Place(Last) - Place(First)) / (Last - First);

    /// <summary>Standard uncertainty of the curve at either end: of a straight line through n points 2·s/√n, of one that bends 3·s/√n.</summary>
    public double EndU => (c == 0 ? 2 : 3) * Scatter / Math.Sqrt(Count);

    /// <summary>Where a line of a number lies.</summary>
    public double Place(double number) => (a + (b * number)) / (1 + (c * number));

    /// <summary>From a line to the next one about there.</summary>
    public double Period(double number) => (b - (a * c)) / ((1 + (c * number)) * (1 + (c * number)));

    /// <summary>The lines of a profile whose ink is below zero; null where there are too few for a curve.</summary>
    public static RuledRow? Of(float[] ink, double period)
    {
        var middles = Middles(ink, period);
        List<(int Number, double Place)> best = [];
        for (var start = 0; start < Starts && start < middles.Count; start++)
        {
            // About the middle, where the period is that of the whole row.
            var at = Math.Clamp((middles.Count / 2) + ((start + 1) / 2 * (start % 2 == 0 ? 2 : -2)), 0, middles.Count - 1);
            List<(int Number, double Place)> lines = [.. Counted(middles, at, period, -1), (0, middles[at]), .. Counted(middles, at, period, 1)];
            if (lines.Count > best.Count) best = lines;
        }

        return best.Count < 4 ? null : Fitted(best);
    }

    /// <summary>Middles of the ink.</summary>
    private static List<double> Middles(float[] ink, double period)
    {
        var deepest = ink.Min();
        var near = Deepest(ink, (int)Math.Ceiling(Around * period));
        var middles = new List<double>();
        for (var i = 0; i < ink.Length; i++)
        {
            if (!Inked(i)) continue;
            var (weight, sum) = (0.0, 0.0);
            for (; i < ink.Length && Inked(i); i++) (weight, sum) = (weight - ink[i], sum - (ink[i] * i));
            middles.Add(sum / weight);
        }

        return middles;

        bool Inked(int i) => ink[i] <= Math.Min(LeastInk * near[i], LeastOfAll * deepest);
    }

    // The least of every window, by a queue of those that can still be it.
    private static float[] Deepest(float[] ink, int window)
    {
        var near = new float[ink.Length];
        var queue = new LinkedList<int>();
        for (var i = 0; i < ink.Length + window; i++)
        {
            if (i < ink.Length)
            {
                while (queue.Last is { } last && ink[last.Value] >= ink[i]) queue.RemoveLast();
                queue.AddLast(i);
            }

            var at = i - window;
            if (at < 0) continue;
            while (queue.First is { } first && first.Value < at - window) queue.RemoveFirst();
            near[at] = ink[queue.First!.Value];
        }

        return near;
    }

    /// <summary>Lines to one side of one of them, in order of place: counted on from the line before, whose period is followed, so that a perspective's slow change adds up without a slip.</summary>
    private static List<(int Number, double Place)> Counted(List<double> middles, int start, double period, int way)
    {
        var lines = new List<(int Number, double Place)>();
        var (number, place, local) = (0, middles[start], period);
        for (var i = start + way; i >= 0 && i < middles.Count; i += way)
        {
            var apart = way * (middles[i] - place);
            var gaps = (int)Math.Round(apart / local);
            if (gaps == 0 || Math.Abs(apart - (gaps * local)) > Reach * local) continue;
            (number, place) = (number + (way * gaps), middles[i]);
            lines.Add((number, place));
            local *= 1 + Math.Clamp(Follow * ((apart / gaps / local) - 1), -MostChange, MostChange);
        }

        if (way < 0) lines.Reverse();
        return lines;
    }

    private static RuledRow? Fitted(List<(int Number, double Place)> lines)
    {
        for (var round = 0; ; round++)
        {
            if (Curve(lines) is not { } curve) return null;
            double Rest((int Number, double Place) line) => line.Place - ((curve.A + (curve.B * line.Number)) / (1 + (curve.C * line.Number)));
            var scatter = Math.Sqrt(lines.Sum(line => Rest(line) * Rest(line)) / Math.Max(1, lines.Count - (curve.C == 0 ? 2 : 3)));
            var kept = lines.Where(line => Math.Abs(Rest(line)) <= Math.Max(MostOff * scatter, LeastOff * curve.B)).ToList();
            if (round > 0 || kept.Count == lines.Count || kept.Count < 4) return new(lines, curve, scatter);
            lines = kept;
        }
    }

    /// <summary>Least squares of place·(1 + c·number) against number, bent where that is sure.</summary>
    private static (double A, double B, double C)? Curve(List<(int Number, double Place)> lines)
    {
        var middle = lines.Average(line => line.Number);
        var (from, half) = (lines.Average(line => line.Place), (lines[^1].Number - lines[0].Number) / 2.0);
        if (half <= 0) return null;
        // Numbers from the middle in half lengths, places from their mean: x = p + q·m − r·m·x.
        var (straight, bent) = (Solved(2), lines.Count > 5 ? Solved(3) : null);
        if (bent is { } curved && Math.Abs(curved.R) > Sure * curved.U && Math.Abs(curved.R) < MostBend) return Unscaled(curved.P, curved.Q, curved.R);
        return straight is { } line ? Unscaled(line.P, line.Q, 0) : null;

        (double P, double Q, double R, double U)? Solved(int unknowns)
        {
            var (information, right) = (new double[unknowns, unknowns], new double[unknowns]);
            var squares = 0.0;
            foreach (var (number, place) in lines)
            {
                var (m, x) = ((number - middle) / half, place - from);
                double[] row = [1, m, -m * x];
                squares += x * x;
                for (var j = 0; j < unknowns; j++)
                {
                    right[j] += row[j] * x;
                    for (var k = 0; k < unknowns; k++) information[j, k] += row[j] * row[k];
                }
            }

            if (PositiveMatrix.Factor(information) is not { } factor) return null;
            var solved = PositiveMatrix.Solve(factor, right);
            if (unknowns == 2) return (solved[0], solved[1], 0, 0);
            var rest = Math.Max(0, squares - solved.Zip(right, (s, r) => s * r).Sum());
            return (solved[0], solved[1], solved[2], Math.Sqrt(PositiveMatrix.Inverse(factor)[2, 2] * rest / (lines.Count - 3)));
        }

        // x − from = (p + q·m)/(1 + r·m), m = (n − middle)/half, as (a + b·n)/(1 + c·n).
        (double A, double B, double C) Unscaled(double p, double q, double r)
        {
            var whole = 1 - (r * middle / half);
            var (top, slope, bend) = (p + from - ((q + (r * from)) * middle / half), (q + (r * from)) / half, r / half);
            return (top / whole, slope / whole, bend / whole);
        }
    }
}
