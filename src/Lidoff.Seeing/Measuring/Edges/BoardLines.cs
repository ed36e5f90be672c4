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

    private const double NearlyAsMany = 0.85;
    private const double Other = 0.035;

    private const double LeastScatter = 0.003;

    // What the fit does not see: parts set down askew, cables, a table's grain. Added to its doubt, in quadrature. A judgement, from
    // turned copies of rendered boards.
    private static readonly double[] Floors = [0.003, 0.003, 0.003, 0.0015];

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
        var (information, covariance) = BoardLineDoubt.Of(lines, turn, solution, scatter, out var cells, out var typical);
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
                    solution = BoardLineFit.Solve(lines, turn, solution, scatter);
                    scatter = Math.Max(LeastScatter, Math.Max(scatter * 0.8, BoardLineFit.Scatter(lines, turn, solution)));
                }

                ends.Add((solution, scatter, BoardLineFit.Kept(lines, turn, solution)));
            }
        }

        // What lies along one side of the picture alone (a caption, a ruler laid askew) can turn all of them: each is tried without it, and then goes on with all lines.
        var start = ends.MaxBy(end => end.Kept);
        foreach (var band in LineBands.Of(lines, turn + start.Solution[0]))
        {
            var without = Refit(band.Without, turn, start.Solution, Math.Min(Reach / 4, 2 * start.Scatter));
            var (solution, scatter) = Refit(lines, turn, without.Solution, without.Scatter);
            ends.Add((solution, scatter, BoardLineFit.Kept(lines, turn, solution)));
        }

        var best = ends.MaxBy(end => end.Kept);
        var open = ends.Any(end => end.Kept > NearlyAsMany * best.Kept && Enumerable.Range(0, BoardLineFit.Unknowns).Any(j => Math.Abs(end.Solution[j] - best.Solution[j]) > Other));
        return open ? null : (best.Solution, best.Scatter);
    }

    private static (double[] Solution, double Scatter) Refit(List<LinePiece> lines, double turn, double[] solution, double scatter)
    {
        for (var round = 0; round < 12; round++)
        {
            solution = BoardLineFit.Solve(lines, turn, solution, scatter);
            scatter = Math.Max(LeastScatter, Math.Max(scatter * 0.7, BoardLineFit.Scatter(lines, turn, solution)));
        }

        return (solution, scatter);
    }

    private static bool OfABoard(IReadOnlyList<EdgeSegment> pieces, List<LinePiece> lines, double turn, double[] solution, double half)
    {
        Span<double> row = stackalloc double[BoardLineFit.Unknowns];
        var (near, reached) = (0.0, 0.0);
        foreach (var line in lines)
        {
            BoardLineFit.Row(line, turn + solution[0], row);
            reached += line.Count;
            if (Math.Abs(BoardLineFit.Rest(line, row, solution)) < Near) near += line.Count;
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

    /// <summary>An angle brought to within half a period of zero.</summary>
    private static double Folded(double angle, double period) => angle - (period * Math.Round(angle / period));
}
