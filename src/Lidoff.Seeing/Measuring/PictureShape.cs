using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// How the scale can vary with direction, as three coefficients of the logarithm of px/mm: level, and unequal axes (two: along the
/// edges and along the diagonals). For a chord each coefficient counts with the factors of <see cref="Factors"/>.
/// </summary>
internal sealed record PictureShape(bool Axes)
{
    /// <summary>Number of coefficients.</summary>
    public const int Count = 3;

    // A picture that gives no cause for doubt was taken square to the board: 0.03 % is the foreshortening of a 1.4° slant.
    private const double TrustAxes = 0.0003;

    // Once the references contradict that, 10 % between directions is thought possible (two standard deviations).
    private const double FreeAxes = 0.025;

    /// <summary>Trust in a square picture.</summary>
    public static PictureShape Square { get; } = new(false);

    /// <summary>Prior standard deviations; the level is practically free.</summary>
    public double[] Priors() => [20, Axes ? FreeAxes : TrustAxes, Axes ? FreeAxes : TrustAxes];

    /// <summary>What each coefficient counts for the length between two places of a picture.</summary>
    public static double[] Factors(PicturePoint from, PicturePoint to)
    {
        var length = from.DistanceTo(to);
        var (dx, dy) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        return [1, (dx * dx) - (dy * dy), 2 * dx * dy];
    }
}
