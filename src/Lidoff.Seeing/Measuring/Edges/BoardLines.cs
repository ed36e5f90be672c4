using Lidoff.Numbers;
using Lidoff.Seeing.Measuring.Cameras;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// Reads the camera's slant and the lens's bow from the straight edges of a picture. Boards are drawn along two directions at a
/// right angle: edges, rows of leads, bodies, lines of copper. Where those directions are found, their drift across the picture
/// is that of a plane seen at a slant, and lines that lean apart from the middle outwards are the lens's.
/// </summary>
internal static class BoardLines
{
    // Fewer pieces in fewer corners of the picture say nothing of the whole.
    private const int LeastPieces = 24;
    private const int LeastCells = 8;

    // Pieces within 15° of the main directions are looked at: a strong slant turns lines by a dozen.
    private const double Reach = 0.26;

    // Lines that scatter by more than 2.5° are no board's.
    private const double MostScatter = 0.044;

    // Where most of the lines near the main directions do not keep to them, or most of all lines lie elsewhere, the directions are
    // chance: on a round board with parts all round, half keep to them; on square boards four fifths and more (measured on photographs).
    private const double Near = 0.026;
    private const double LeastNear = 0.68;
    private const double LeastReach = 0.55;

    // Starts of the search, radians of turn and of excess over a right angle; and what makes two ends of it different.
    private static readonly double[] Starts = [0, -0.07, 0.07];

    // A line counts as kept to while it is off by less than so many times its own doubt: long ones say most.
    private const double KeptWithin = 1.5;
    private const double NearlyAsMany = 0.85;
    private const double Other = 0.035;

    private const double LeastScatter = 0.003;
    private const int Unknowns = 5;
    private const int Grid = 6;

    // What the fit does not see: parts set down askew, cables, a table's grain. Added to its doubt, in quadrature. A judgement, from
    // turned copies of rendered boards.
    private static readonly double[] Floors = [0.003, 0.003, 0.003, 0.0015];

    // Weak beliefs that keep the fit in bounds where a direction has no lines: turn, angle, convergence, bow.
    private static readonly double[] Bounds = [1, 0.05, 0.2, 0.2, 0.05];

    /// <summary>What the pieces say, or null where they are not those of a board.</summary>
    /// <param name="pieces">Pieces of edges.</param>
    /// <param name="width">Width of the picture they were found in, px.</param>
    /// <param name="height">Its height, px.</param>
    public static PictureSlant? Read(IReadOnlyList<EdgeSegment> pieces, int width, int height)
    {
        var half = Math.Max(width, height) / 2.0;
        if (MainDirection(pieces) is not { } turn) return null;
        List<LinePiece> lines = [];
        foreach (var piece in pieces)
        {
            var apart = Folded(piece.Angle - turn, Math.PI / 2);
            if (Math.Abs(apart) > Reach) continue;
            var second = Math.Abs(Folded(piece.Angle - turn, Math.PI)) > Math.PI / 4;
            var u = 0.003 + (1 / piece.Length);
            lines.Add(new((piece.X - (width / 2.0)) / half, (piece.Y - (height / 2.0)) / half, apart, second, u, Count(piece, half)));
        }

        if (lines.Count < LeastPieces) return null;
        if (Settled(lines, turn) is not var (solution, scatter)) return null;
        if (!OfABoard(pieces, lines, turn, solution, half)) return null;
        var (information, covariance) = Doubt(lines, turn, solution, scatter, out var cells, out var typical);
        if (information is null || cells < LeastCells || typical > MostScatter) return null;
        double[] seen = [solution[2], solution[3], solution[1], solution[4]];
        int[] order = [2, 3, 1, 4];
        var known = new double[PictureSlant.Count, PictureSlant.Count];
        for (var i = 0; i < PictureSlant.Count; i++)
        {
            for (var j = 0; j < PictureSlant.Count; j++) known[i, j] = covariance[order[i], order[j]] + (i == j ? Floors[i] * Floors[i] : 0);
        }

        return new(turn + solution[0], seen, known);
    }

    /// <summary>
    /// The fit that most lines keep to, from several starts; null where quite another one is kept to by nearly as many: then which
    /// lines belong together is a guess.
    /// </summary>
    private static (double[] Solution, double Scatter)? Settled(List<LinePiece> lines, double turn)
    {
        var ends = new List<(double[] Solution, double Scatter, double Kept)>();
        foreach (var first in Starts)
        {
            foreach (var excess in Starts)
            {
                double[] solution = [first, excess, 0, 0, 0];
                var scatter = Reach / 4;
                for (var round = 0; round < 20; round++)
                {
                    solution = Solve(lines, turn, solution, scatter);
                    scatter = Math.Max(LeastScatter, Math.Max(scatter * 0.8, Scatter(lines, turn, solution)));
                }

                ends.Add((solution, scatter, Kept(lines, turn, solution)));
            }
        }

        // What lies along one side of the picture alone (a caption, a ruler laid askew) can turn all of them: each is tried without it, and then goes on with all lines.
        var start = ends.MaxBy(end => end.Kept);
        foreach (var band in LineBands.Of(lines, turn + start.Solution[0]))
        {
            var without = Refit(band.Without, turn, start.Solution, Math.Min(Reach / 4, 2 * start.Scatter));
            var (solution, scatter) = Refit(lines, turn, without.Solution, without.Scatter);
            ends.Add((solution, scatter, Kept(lines, turn, solution)));
        }

        var best = ends.MaxBy(end => end.Kept);
        var open = ends.Any(end => end.Kept > NearlyAsMany * best.Kept && Enumerable.Range(0, Unknowns).Any(j => Math.Abs(end.Solution[j] - best.Solution[j]) > Other));
        return open ? null : (best.Solution, best.Scatter);
    }

    private static (double[] Solution, double Scatter) Refit(List<LinePiece> lines, double turn, double[] solution, double scatter)
    {
        for (var round = 0; round < 12; round++)
        {
            solution = Solve(lines, turn, solution, scatter);
            scatter = Math.Max(LeastScatter, Math.Max(scatter * 0.7, Scatter(lines, turn, solution)));
        }

        return (solution, scatter);
    }

    /// <summary>How much of the lines keeps to a fit, full for those on it and nothing for those off by more than one and a half times their doubt.</summary>
    private static double Kept(List<LinePiece> lines, double turn, double[] solution)
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

    private static bool OfABoard(IReadOnlyList<EdgeSegment> pieces, List<LinePiece> lines, double turn, double[] solution, double half)
    {
        Span<double> row = stackalloc double[Unknowns];
        var (near, reached) = (0.0, 0.0);
        foreach (var line in lines)
        {
            Row(line, turn + solution[0], row);
            reached += line.Count;
            if (Math.Abs(Rest(line, row, solution)) < Near) near += line.Count;
        }

        return near > LeastNear * reached && reached > LeastReach * pieces.Sum(piece => Count(piece, half));
    }

    /// <summary>How much a piece counts: by its length, up to a quarter of the picture.</summary>
    private static double Count(in EdgeSegment piece, double half) => Math.Min(20 * piece.Length / half, 10);

    private static double? MainDirection(IReadOnlyList<EdgeSegment> pieces)
    {
        // Four times the angle makes the two directions and both senses one; the longest lines count most.
        const int bins = 90;
        var heap = new double[bins];
        foreach (var piece in pieces) heap[(int)Math.Min(bins - 1, (Folded(piece.Angle, Math.PI / 2) + (Math.PI / 4)) / (Math.PI / 2) * bins)] += piece.Length;
        var total = heap.Sum();
        if (total <= 0) return null;
        var smooth = Enumerable.Range(0, bins).Select(i => Enumerable.Range(-4, 9).Sum(k => heap[(i + k + bins) % bins] * (5 - Math.Abs(k)))).ToArray();
        var best = Enumerable.Range(0, bins).MaxBy(i => smooth[i]);
        return ((best + 0.5) / bins * (Math.PI / 2)) - (Math.PI / 4);
    }

    /// <summary>What each unknown counts for a piece's angle: turn, excess over a right angle, convergence along x and y, bow.</summary>
    private static void Row(in LinePiece line, double turn, Span<double> row)
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

    private static double[] Solve(List<LinePiece> lines, double turn, double[] before, double scatter)
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
    private static double Weight(in LinePiece line, Span<double> row, double[] solution, double scatter)
    {
        var spread = (scatter * scatter) + (line.U * line.U);
        var rest = Rest(line, row, solution);
        var share = rest * rest / (25 * spread);
        return share >= 1 ? 0 : (1 - share) * (1 - share) / spread * line.Count;
    }

    private static double Rest(in LinePiece line, Span<double> row, double[] solution)
    {
        var rest = line.Angle;
        for (var j = 0; j < Unknowns; j++) rest -= row[j] * solution[j];
        return rest;
    }

    /// <summary>Median of the absolute rests, as the standard deviation of a normal distribution that has it.</summary>
    private static double Scatter(List<LinePiece> lines, double turn, double[] solution)
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

    /// <summary>
    /// The covariance by what really remains (Huber's sandwich), summed by cells of the picture and direction: the sides of one part
    /// or one long edge in many pieces are one witness.
    /// </summary>
    private static (double[,]? Information, double[,] Covariance) Doubt(
        List<LinePiece> lines, double turn, double[] solution, double scatter, out int cells, out double typical)
    {
        var information = new double[Unknowns, Unknowns];
        var scores = new SortedDictionary<int, double[]>();
        Span<double> row = stackalloc double[Unknowns];
        var (weights, squares) = (0.0, 0.0);
        foreach (var line in lines)
        {
            Row(line, turn + solution[0], row);
            var weight = Weight(line, row, solution, scatter);
            if (weight <= 0) continue;
            var rest = Rest(line, row, solution);
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
        for (var j = 0; j < Unknowns; j++) information[j, j] += 1 / (Bounds[j] * Bounds[j]);
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
                for (var k = 0; k < Unknowns; k++) middle[j, k] += inverse[j, b] * inverse[b, k] / (Bounds[b] * Bounds[b]);
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
                var without = Solve(band.Without, turn, Solve(band.Without, turn, solution, scatter), scatter);
                for (var j = 0; j < Unknowns; j++) sums[j] += band.Part * (without[j] - solution[j]) * (without[j] - solution[j]);
            }

            for (var j = 0; j < Unknowns; j++) wider[j] = Math.Max(wider[j], Math.Sqrt(sums[j] / covariance[j, j]));
        }

        for (var j = 0; j < Unknowns; j++)
        {
            for (var k = 0; k < Unknowns; k++) covariance[j, k] *= wider[j] * wider[k];
        }
    }

    /// <summary>An angle brought to within half a period of zero.</summary>
    private static double Folded(double angle, double period) => angle - (period * Math.Round(angle / period));
}
