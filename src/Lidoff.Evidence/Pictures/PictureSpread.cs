namespace Lidoff.Evidence.Pictures;

/// <summary>Variances and covariance of a point, in squared units of its frame.</summary>
public readonly record struct PictureSpread(double XX, double XY, double YY)
{
    /// <summary>The same standard uncertainty in x and y, uncorrelated: a click.</summary>
    public static PictureSpread Round(double u) => new(u * u, 0, u * u);
}
