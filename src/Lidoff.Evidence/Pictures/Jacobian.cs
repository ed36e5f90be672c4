namespace Lidoff.Evidence.Pictures;

/// <summary>How a map stretches around one point: dx' = XX·dx + XY·dy, dy' = YX·dx + YY·dy.</summary>
public readonly record struct Jacobian(double XX, double XY, double YX, double YY)
{
    /// <summary>Below zero where the map mirrors; its size is how much areas grow.</summary>
    public double Determinant => (XX * YY) - (XY * YX);

    /// <summary>First-order spread of the mapped point (J·C·Jᵀ, GUM 5.1.2 for two outputs).</summary>
    public PictureSpread Carry(PictureSpread c) => new(
        (XX * XX * c.XX) + (2 * XX * XY * c.XY) + (XY * XY * c.YY),
        (XX * YX * c.XX) + (((XX * YY) + (XY * YX)) * c.XY) + (XY * YY * c.YY),
        (YX * YX * c.XX) + (2 * YX * YY * c.XY) + (YY * YY * c.YY));

    /// <summary>This map first, then <paramref name="next"/>.</summary>
    public Jacobian Then(Jacobian next) => new(
        (next.XX * XX) + (next.XY * YX),
        (next.XX * XY) + (next.XY * YY),
        (next.YX * XX) + (next.YY * YX),
        (next.YX * XY) + (next.YY * YY));
}
