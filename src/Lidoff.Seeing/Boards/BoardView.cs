using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards;

/// <summary>
/// How a picture sees the board: eight numbers that make a homography from board millimetres to pixels, written as a similarity (shift,
/// scale and turn) times what a slanted camera adds. For a point q from <see cref="Centre"/>, mirrored in x for the lower side:
/// <c>p = t + S·(I + E)·q / (1 + g·q/ρ)</c> with S = [a −b; b a], E = [e₁ e₂; e₂ −e₁].
/// </summary>
internal sealed class BoardView
{
    /// <summary>Number of coefficients: tx, ty, a, b, e₁, e₂, g₁, g₂.</summary>
    public const int Count = 8;

    /// <summary>
    /// Standard deviation of each e before anything is known: a bench picture leans by less than some 20°, and cos 20° is 0.94, so that
    /// both axes differ by 6 % and e is 0.03, two of these.
    /// </summary>
    public const double AxesSpread = 0.015;

    /// <summary>The same of each g: over half a frame that fills a 25° view, 15° change the scale by tan 15° · tan 12.5° = 6 %, two of these.</summary>
    public const double SlopeSpread = 0.03;

    private readonly double[] x;
    private PictureTransform? toBoard;

    public BoardView(PicturePoint centre, double reachMm, bool mirrored, double[] coefficients)
    {
        Guard.That(coefficients.Length == Count, "eight coefficients");
        (Centre, ReachMm, Mirrored, x) = (centre, Guard.Positive(reachMm), mirrored, coefficients);
    }

    /// <summary>The board point about which it is written, mm.</summary>
    public PicturePoint Centre { get; }

    /// <summary>ρ: half the picture's long side on the board, mm.</summary>
    public double ReachMm { get; }

    /// <summary>True when it shows the lower side (or was mirrored).</summary>
    public bool Mirrored { get; }

    /// <summary>Standard deviation of a coefficient before anything is known; null for the four that only sightings tell.</summary>
    public static double? SpreadOf(int index) => index < 4 ? null : index < 6 ? AxesSpread : SlopeSpread;

    /// <summary>One of the eight.</summary>
    public double this[int index] => x[index];

    /// <summary>Scale at the centre, px/mm.</summary>
    public double PxPerMm => Math.Sqrt((x[2] * x[2]) + (x[3] * x[3]));

    /// <summary>A picture taken as seen square whose upper corner at the board's left is the board's origin.</summary>
    public static BoardView Square(PictureFrame frame, bool mirrored, double pxPerMm)
    {
        var (x, y) = (frame.Width / 2.0, frame.Height / 2.0);
        return new(new(x / pxPerMm, y / pxPerMm), Math.Max(x, y) / pxPerMm, mirrored, [x, y, pxPerMm, 0, 0, 0, 0, 0]);
    }

    /// <summary>The similarity that lays pairs (board mm to px) best upon one another, without lean. At least two pairs at different places.</summary>
    public static BoardView Similar(IReadOnlyList<PointPair> pairs, PictureFrame frame, bool mirrored)
    {
        Guard.That(pairs.Count >= 2, "two pairs");
        var (centre, middle) = (Mean([.. pairs.Select(pair => pair.From)]), Mean([.. pairs.Select(pair => pair.To)]));
        double a = 0, b = 0, size = 0;
        foreach (var pair in pairs)
        {
            var (u, v) = ((mirrored ? -1 : 1) * (pair.From.X - centre.X), pair.From.Y - centre.Y);
            var (px, py) = (pair.To.X - middle.X, pair.To.Y - middle.Y);
            a += (u * px) + (v * py);
            b += (u * py) - (v * px);
            size += (u * u) + (v * v);
        }

        (a, b) = (a / size, b / size);
        var scale = Math.Sqrt((a * a) + (b * b));
        return new(centre, Math.Max(frame.Width, frame.Height) / 2.0 / scale, mirrored, [middle.X, middle.Y, a, b, 0, 0, 0, 0]);
    }

    /// <summary>Where a board point shows.</summary>
    public PicturePoint Show(PicturePoint board)
    {
        var (u, v, w) = Leant(board);
        return new(x[0] + (((x[2] * u) - (x[3] * v)) / w), x[1] + (((x[3] * u) + (x[2] * v)) / w));
    }

    /// <summary>Which board point shows there; not a number beyond the horizon.</summary>
    public PicturePoint Find(PicturePoint picture) => (toBoard ??= ToPicture("picture").Inverse()).Map(picture);

    /// <summary>How the place in the picture moves with each coefficient (2 × 8) and with the board point (2 × 2).</summary>
    public (double[,] ByView, Jacobian ByPoint) Slopes(PicturePoint board)
    {
        var sign = Mirrored ? -1.0 : 1.0;
        var (dx, dy) = (board.X - Centre.X, board.Y - Centre.Y);
        var (qx, qy) = (sign * dx, dy);
        var (u, v, w) = Leant(board);
        var (a, b) = (x[2], x[3]);
        var (rx, ry) = (((a * u) - (b * v)) / w, ((b * u) + (a * v)) / w);
        var by = new double[2, Count];
        (by[0, 0], by[1, 1]) = (1, 1);
        (by[0, 2], by[1, 2]) = (u / w, v / w);
        (by[0, 3], by[1, 3]) = (-v / w, u / w);
        (by[0, 4], by[1, 4]) = (((a * qx) + (b * qy)) / w, ((b * qx) - (a * qy)) / w);
        (by[0, 5], by[1, 5]) = (((a * qy) - (b * qx)) / w, ((b * qy) + (a * qx)) / w);
        var (gx, gy) = (dx / ReachMm / w, dy / ReachMm / w);
        (by[0, 6], by[1, 6]) = (-rx * gx, -ry * gx);
        (by[0, 7], by[1, 7]) = (-rx * gy, -ry * gy);

        // d(I+E)q/dboard, then the quotient's share.
        var (ux, uy, vx, vy) = (sign * (1 + x[4]), x[5], sign * x[5], 1 - x[4]);
        var (g1, g2) = (x[6] / ReachMm / w, x[7] / ReachMm / w);
        return (by, new(
            (((a * ux) - (b * vx)) / w) - (rx * g1),
            (((a * uy) - (b * vy)) / w) - (rx * g2),
            (((b * ux) + (a * vx)) / w) - (ry * g1),
            (((b * uy) + (a * vy)) / w) - (ry * g2)));
    }

    /// <summary>The same view with a step added to every coefficient.</summary>
    public BoardView Moved(Func<int, double> step) => new(Centre, ReachMm, Mirrored, [.. x.Select((value, i) => value + step(i))]);

    /// <summary>As a map from board millimetres to the picture.</summary>
    public Projective ToPicture(string picture)
    {
        var sign = Mirrored ? -1.0 : 1.0;
        // Numerator t·w + S(I+E)q and denominator w, each linear in the board point.
        var (a, b) = (x[2], x[3]);
        var (g1, g2) = (x[6] / ReachMm, x[7] / ReachMm);
        var (m11, m12) = ((((a * (1 + x[4])) - (b * x[5])) * sign) + (x[0] * g1), (a * x[5]) - (b * (1 - x[4])) + (x[0] * g2));
        var (m21, m22) = ((((b * (1 + x[4])) + (a * x[5])) * sign) + (x[1] * g1), (b * x[5]) + (a * (1 - x[4])) + (x[1] * g2));
        return new(BoardMap.Frame, picture, new(
            m11, m12, x[0] - (m11 * Centre.X) - (m12 * Centre.Y),
            m21, m22, x[1] - (m21 * Centre.X) - (m22 * Centre.Y),
            g1, g2, 1 - (g1 * Centre.X) - (g2 * Centre.Y)));
    }

    /// <summary>True when the whole picture lies on the near side of the horizon, so that every place of it is a place on the board.</summary>
    public bool Sees(PicturePoint board) => Leant(board).W > 0.2;

    private (double U, double V, double W) Leant(PicturePoint board)
    {
        var (dx, dy) = (board.X - Centre.X, board.Y - Centre.Y);
        var (qx, qy) = (Mirrored ? -dx : dx, dy);
        return (((1 + x[4]) * qx) + (x[5] * qy), (x[5] * qx) + ((1 - x[4]) * qy), 1 + (((x[6] * dx) + (x[7] * dy)) / ReachMm));
    }

    private static PicturePoint Mean(IReadOnlyList<PicturePoint> points) => new(points.Sum(point => point.X) / points.Count, points.Sum(point => point.Y) / points.Count);
}
