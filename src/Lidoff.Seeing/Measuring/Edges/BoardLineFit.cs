using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// The robust fit of turn, excess over a right angle, convergence along x and y, and bow to pieces of lines: one weighted least-squares step, and how far the lines lie from it.
/// </summary>
internal static class BoardLineFit
{
    /// <summary>Number of what is fitted.</summary>
    public const int Unknowns = 5;

    // A line counts as kept to while it is off by less than so many times its own doubt: long ones say most.
    private const double KeptWithin = 1.5;

    /// <summary>Weak beliefs that keep the fit in bounds where a direction has no lines: turn, angle, convergence, bow.</summary>
    public static IReadOnlyList<double> Bounds { get; } = [1, 0.05, 0.2, 0.2, 0.05];

    /// <summary>What each unknown counts for a piece's angle: turn, excess over a right angle, convergence along x and y, bow.</summary>
    public static void Row(in LinePiece line, double turn, Span<double> row)
    {
        var angle = turn + (line.Second ? Math.PI / 2 : 0);
        var (ux, uy) = (Elementary.Cos(angle), Elementary.Sin(angle));
        var across = (line.Y * ux) - (line.X * uy);
        row[0] = 1;
        row[1] = line.Second ? 1 : 0;
        row[2] = -across * ux;
        row[3] = -across * uy;
        row[4] = -2 * ((line.X * ux) + (line.Y * uy)) * across;
    }

    /// <summary>One step of the fit, lines weighted by how far they lay from the one before.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="turn">Direction that angles are counted from, radians.</param>
    /// <param name="before">The fit before.</param>
    /// <param name="scatter">Scatter of the lines about it, radians.</param>
    public static double[] Solve(List<LinePiece> lines, double turn, double[] before, double scatter)
    {
        var (information, right) = (new double[Unknowns, Unknowns], new double[Unknowns]);
        for (var j = 0; j < Unknowns; j++) information[j, j] = 1 / (Bounds[j] * Bounds[j]);
        Span<double> row = stackalloc double[Unknowns];
        foreach (var line in lines)
        {
            Row(line, turn + before[0], row);
            var weight = Weight(line, row, before, scatter);
            for (var j = 0; j < Unknowns; j++)
            {
                right[j] += weight * row[j] * line.Angle;
                for (var k = 0; k < Unknowns; k++) information[j, k] += weight * row[j] * row[k];
            }
        }

        return PositiveMatrix.Solve(PositiveMatrix.Factor(information)!, right);
    }

    /// <summary>Tukey's biweight: what lies further off than five times the scatter counts for nothing.</summary>
    public static double Weight(in LinePiece line, Span<double> row, double[] solution, double scatter)
    {
        var spread = (scatter * scatter) + (line.U * line.U);
        var rest = Rest(line, row, solution);
        var share = rest * rest / (25 * spread);
        return share >= 1 ? 0 : (1 - share) * (1 - share) / spread * line.Count;
    }

    /// <summary>How far a line is turned from where the fit has it, radians.</summary>
    public static double Rest(in LinePiece line, Span<double> row, double[] solution)
    {
        var rest = line.Angle;
        for (var j = 0; j < Unknowns; j++) rest -= row[j] * solution[j];
        return rest;
    }

    /// <summary>Median of the absolute rests, as the standard deviation of a normal distribution that has it.</summary>
    public static double Scatter(List<LinePiece> lines, double turn, double[] solution)
    {
        Span<double> row = stackalloc double[Unknowns];
        var rests = new List<(double Off, double Count)>(lines.Count);
        foreach (var line in lines)
        {
            Row(line, turn + solution[0], row);
            rests.Add((Math.Abs(Rest(line, row, solution)), line.Count));
        }

        rests.Sort();
        var (half, sum) = (rests.Sum(each => each.Count) / 2, 0.0);
        foreach (var (rest, count) in rests) if ((sum += count) >= half) return 1.4826 * rest;
        return 0;
    }

    /// <summary>How much of the lines keeps to a fit, full for those on it and nothing for those off by more than one and a half times their doubt.</summary>
    public static double Kept(List<LinePiece> lines, double turn, double[] solution)
    {
        Span<double> row = stackalloc double[Unknowns];
        var kept = 0.0;
        foreach (var line in lines)
        {
            Row(line, turn + solution[0], row);
            kept += line.Count * Math.Max(0, 1 - Math.Abs(Rest(line, row, solution) / (KeptWithin * line.U)));
        }

        return kept;
    }
}
