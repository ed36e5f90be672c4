using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// What the straight edges of a picture say of the camera: how lines that are parallel on the board converge, how far two
/// families of them are from a right angle, and how lines bow. Places in half long sides from the middle.
/// </summary>
public sealed class PictureSlant
{
    /// <summary>Number of residuals.</summary>
    internal const int Count = 4;

    private readonly double[] seen;
    private readonly double[,] whitening;
    private readonly double turn;

    /// <summary>From a fit.</summary>
    /// <param name="turn">Direction of the first family in the picture, radians.</param>
    /// <param name="seen">Convergence along x and y, excess of the angle between the families over a right one (radians), bend.</param>
    /// <param name="covariance">Their covariance, positive definite.</param>
    internal PictureSlant(double turn, double[] seen, double[,] covariance)
    {
        this.turn = turn;
        this.seen = seen;
        var information = PositiveMatrix.Inverse(PositiveMatrix.Factor(covariance)!);
        whitening = PositiveMatrix.Factor(information)!;
        Seen = seen;
        Covariance = covariance;
    }

    /// <summary>From numbers that were kept; null where the covariance is none.</summary>
    /// <param name="turn">Direction of the first family in the picture, radians.</param>
    /// <param name="seen">Convergence along x and y, excess over a right angle (radians), bend.</param>
    /// <param name="lower">The lower triangle of their covariance, row by row.</param>
    internal static PictureSlant? Of(double turn, IReadOnlyList<double> seen, IReadOnlyList<double> lower)
    {
        Guard.That(seen.Count == Count && lower.Count == Count * (Count + 1) / 2, "four things seen and the lower triangle of their covariance");
        var covariance = new double[Count, Count];
        var next = 0;
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j <= i; j++) covariance[i, j] = covariance[j, i] = lower[next++];
        }

        return PositiveMatrix.Factor(covariance) is { } factor && PositiveMatrix.Factor(PositiveMatrix.Inverse(factor)) is not null
            ? new(turn, [.. seen], covariance)
            : null;
    }

    /// <summary>The lower triangle of <see cref="Covariance"/>, row by row.</summary>
    internal IReadOnlyList<double> Lower()
    {
        var lower = new List<double>();
        for (var i = 0; i < Count; i++)
        {
            for (var j = 0; j <= i; j++) lower.Add(Covariance[i, j]);
        }

        return lower;
    }

    /// <summary>Convergence along x and y per half long side, excess over a right angle (radians), bend.</summary>
    internal IReadOnlyList<double> Seen { get; }

    /// <summary>Direction of the first family of lines in the picture, radians.</summary>
    internal double Turn => turn;

    /// <summary>Covariance of <see cref="Seen"/>.</summary>
    internal double[,] Covariance { get; }

    /// <summary>What was seen less what a pose makes, in standard deviations.</summary>
    internal void Residuals(CameraPose pose, double focal, Span<double> rest)
    {
        var (sin, cos) = (Lidoff.Numbers.Elementary.Sin(2 * turn), Lidoff.Numbers.Elementary.Cos(2 * turn));
        // Directions u and v at a right angle on the board have u·M·v = 0 in the picture, M = 1 + slant·slantᵀ, pixels stretched first.
        var skew = (sin / 2 * ((pose.Down * pose.Down) - (pose.Right * pose.Right) + (2 * pose.Aspect))) + (cos * pose.Right * pose.Down);
        Span<double> apart = [seen[0] - (pose.Right / focal), seen[1] - (pose.Down / focal), seen[2] - skew, seen[3] - pose.Bend];
        for (var j = 0; j < Count; j++)
        {
            var sum = 0.0;
            for (var i = j; i < Count; i++) sum += whitening[i, j] * apart[i];
            rest[j] = sum;
        }
    }
}
