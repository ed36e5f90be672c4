namespace Lidoff.Seeing.Boards;

/// <summary>A length on the board.</summary>
/// <param name="Mm">Value, mm.</param>
/// <param name="U">Standard uncertainty, mm.</param>
/// <param name="ShareU">The part of it that comes from how the picture lies, and is shared with its other lengths, mm.</param>
public sealed record BoardLength(double Mm, double U, double ShareU)
{
    // The normal's 5 % and 95 % points.
    private const double Ninety = 1.6448536269514722;

    /// <summary>Lower end of the 90 % interval, mm.</summary>
    public double Low => Mm - (Ninety * U);

    /// <summary>Upper end of the 90 % interval, mm.</summary>
    public double High => Mm + (Ninety * U);
}
