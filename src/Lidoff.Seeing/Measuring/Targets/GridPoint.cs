namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>Something that may be a corner or dot of a target.</summary>
/// <param name="X">Its place, px.</param>
/// <param name="Y">Its place, px.</param>
/// <param name="Phase">Of a corner: twice the direction of its dark squares, radians; not a number for a dot.</param>
/// <param name="Size">Of a dot: its radius, px; 0 for a corner.</param>
internal readonly record struct GridPoint(double X, double Y, double Phase, double Size)
{
    // Neighbours lean alike but for slant and lens; cosine of what they may differ by.
    private const double Alike = 0.5;

    // Radii of neighbouring dots differ by slant and grain.
    private const double MostSizeRatio = 1.35;

    /// <summary>Whether two points can be corners or dots of one target that many steps apart: corners change their colours with every step.</summary>
    public bool Fits(in GridPoint other, int steps)
    {
        if (Size > 0) return Math.Max(Size, other.Size) < MostSizeRatio * Math.Min(Size, other.Size);
        var alike = Lidoff.Numbers.Elementary.Cos(Phase - other.Phase);
        return (steps % 2 == 0 ? alike : -alike) > Alike;
    }
}
