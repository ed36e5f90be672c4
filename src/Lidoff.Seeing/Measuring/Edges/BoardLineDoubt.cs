namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>How doubtful a fit of lines is, by what really remains of them and by what each part of the picture says alone.</summary>
internal static class BoardLineDoubt
{
    private const int Unknowns = BoardLineFit.Unknowns;
    private const int Grid = 6;

    /// <summary>
    /// The covariance by what really remains (Huber's sandwich), summed by cells of the picture and direction: the sides of one part
    /// or one long edge in many pieces are one witness.
    /// </summary>
    public static (double[,]? Information, double[,] Covariance) Of(
        List<LinePiece> lines, double turn, double[] solution, double scatter, out int cells, out double typical)
    {
        var information = new double[Unknowns, Unknowns];
        var scores = new SortedDictionary<int, double[]>();
        Span<double> row = stackalloc double[Unknowns];
        var (weights, squares) = (0.0, 0.0);
        foreach (var line in lines)
        {
            BoardLineFit.Row(line, turn + solution[0], row);
            var weight = BoardLineFit.Weight(line, row, solution, scatter);
            if (weight <= 0) continue;
            var rest = BoardLineFit.Rest(line, row, solution);
            (weights, squares) = (weights + weight, squares + (weight * rest * rest));
            var cell = ((int)((line.X + 1) * Grid / 2) * 100) + ((int)((line.Y + 1) * Grid / 2) * 2) + (line.Second ? 1 : 0);
            if (!scores.TryGetValue(cell, out var score)) scores[cell] = score = new double[Unknowns];
            for (var j = 0; j < Unknowns; j++)
            {
                score[j] += weight * row[j] * rest;
                for (var k = 0; k < Unknowns; k++) information[j, k] += weight * row[j] * row[k];
            }
        }

        cells = scores.Count;
        typical = weights > 0 ? Math.Sqrt(squares / weights) : double.PositiveInfinity;
        for (var j = 0; j < Unknowns; j++) information[j, j] += 1 / (BoardLineFit.Bounds[j] * BoardLineFit.Bounds[j]);
        var factor = PositiveMatrix.Factor(information);
        if (factor is null || cells <= Unknowns) return (null, information);
        var inverse = PositiveMatrix.Inverse(factor);
        var middle = new double[Unknowns, Unknowns];
        foreach (var score in scores.Values)
        {
            var moved = PositiveMatrix.Solve(factor, score);
            for (var j = 0; j < Unknowns; j++)
            {
                for (var k = 0; k < Unknowns; k++) middle[j, k] += moved[j] * moved[k] * cells / (cells - Unknowns);
            }
        }

        Jackknife(lines, turn, solution, scatter, middle);
        // Where no lines lie, the fit rests on the bounds alone, and so does its doubt.
        for (var b = 0; b < Unknowns; b++)
        {
            for (var j = 0; j < Unknowns; j++)
            {
                for (var k = 0; k < Unknowns; k++) middle[j, k] += inverse[j, b] * inverse[b, k] / (BoardLineFit.Bounds[b] * BoardLineFit.Bounds[b]);
            }
        }

        return (information, middle);
    }

    /// <summary>
    /// What all lines of one band across the picture say together is one witness too (a caption, a ruler laid askew): each coefficient is at least as doubtful as it moves when bands are
    /// left out one by one (the jackknife; Efron and Stein, Ann. Stat. 9, 1981).
    /// </summary>
    private static void Jackknife(List<LinePiece> lines, double turn, double[] solution, double scatter, double[,] covariance)
    {
        var wider = new double[Unknowns];
        Array.Fill(wider, 1);
        foreach (var set in LineBands.Of(lines, turn + solution[0]).Where(band => band.Narrow).GroupBy(band => band.Set))
        {
            var sums = new double[Unknowns];
            foreach (var band in set)
            {
                var without = BoardLineFit.Solve(band.Without, turn, BoardLineFit.Solve(band.Without, turn, solution, scatter), scatter);
                for (var j = 0; j < Unknowns; j++) sums[j] += band.Part * (without[j] - solution[j]) * (without[j] - solution[j]);
            }

            for (var j = 0; j < Unknowns; j++) wider[j] = Math.Max(wider[j], Math.Sqrt(sums[j] / covariance[j, j]));
        }

        for (var j = 0; j < Unknowns; j++)
        {
            for (var k = 0; k < Unknowns; k++) covariance[j, k] *= wider[j] * wider[k];
        }
    }
}
