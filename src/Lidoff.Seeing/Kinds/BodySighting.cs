namespace Lidoff.Seeing.Kinds;

/// <summary>Both sides of a body, mm, as measured (in no order), the standard uncertainty of each, and its height above the board when measured.</summary>
public sealed record BodySighting(string Spot, double FirstMm, double SecondMm, double UMm, double? HeightMm)
{
    /// <summary>The longer side, mm.</summary>
    public double LengthMm => Math.Max(FirstMm, SecondMm);

    /// <summary>The shorter side, mm.</summary>
    public double WidthMm => Math.Min(FirstMm, SecondMm);
}
