using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// How the scale of a picture can vary, as six coefficients of the logarithm of px/mm: level; unequal axes (two: along the edges
/// and along the diagonals); slope across the picture (two) from a slanted camera; growth with the square of the radius from the
/// lens. For a chord between two places each coefficient counts with the factors of <see cref="Factors"/>, which follow to first
/// order from x' = x(1 + g·x) for the slant and x' = x(1 + k·r²) for the lens.
/// </summary>
internal sealed record PictureShape(bool Axes, bool Tilt, bool Lens)
{
    /// <summary>Number of coefficients.</summary>
    public const int Count = 6;

    // A picture that gives no cause for doubt was taken square to the board: 0.03 % is the foreshortening of a 1.4° slant.
    // More would make the 90 % of a clean picture hold 94 % and more (measured on simulated jobs); less would trust the camera more than a bench can.
    private const double TrustAxes = 0.0003;
    private const double TrustSlope = 0.0003;
    private const double TrustLens = 0.0002;

    // Once the references contradict that, 10 % between directions, 20 % across the picture and 6 % from the lens are thought possible (two standard deviations).
    private const double FreeAxes = 0.025;
    private const double FreeSlope = 0.05;
    private const double FreeLens = 0.03;

    /// <summary>Trust in a square picture.</summary>
    public static PictureShape Square { get; } = new(false, false, false);

    /// <summary>Prior standard deviations; the level is practically free.</summary>
    public double[] Priors() =>
    [
        20,
        Axes ? FreeAxes : TrustAxes,
        Axes ? FreeAxes : TrustAxes,
        Tilt ? FreeSlope : TrustSlope,
        Tilt ? FreeSlope : TrustSlope,
        Lens ? FreeLens : TrustLens,
    ];

    /// <summary>What each coefficient counts for the length between two places of a picture.</summary>
    public static double[] Factors(PicturePoint from, PicturePoint to, PictureFrame frame)
    {
        var half = Math.Max(frame.Width, frame.Height) / 2.0;
        var (x1, y1) = ((from.X - (frame.Width / 2.0)) / half, (from.Y - (frame.Height / 2.0)) / half);
        var (x2, y2) = ((to.X - (frame.Width / 2.0)) / half, (to.Y - (frame.Height / 2.0)) / half);
        var length = Math.Sqrt(((x2 - x1) * (x2 - x1)) + ((y2 - y1) * (y2 - y1)));
        var (dx, dy) = ((x2 - x1) / length, (y2 - y1) / length);
        var (along1, along2) = ((x1 * dx) + (y1 * dy), (x2 * dx) + (y2 * dy));
        return
        [
            1,
            (dx * dx) - (dy * dy),
            2 * dx * dy,
            ((along2 * x2) - (along1 * x1)) / length,
            ((along2 * y2) - (along1 * y1)) / length,
            ((along2 * ((x2 * x2) + (y2 * y2))) - (along1 * ((x1 * x1) + (y1 * y1)))) / length,
        ];
    }
}
