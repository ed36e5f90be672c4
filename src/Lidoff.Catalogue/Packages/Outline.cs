namespace Lidoff.Catalogue.Packages;

/// <summary>
/// One standard or drawn package outline; lengths in mm, length the longer side. Unknown is null or empty. <paramref name="HeightBasis"/> says
/// what the height is: <c>outline max</c> the greatest allowed one of an outline table, <c>3-D model nominal</c> good to 0.15 mm at best.
/// </summary>
public sealed record Outline(
    string Name, string Family, string StandardCode, double LengthMm, double WidthMm, (double Least, double Most)? LengthRange,
    (double Least, double Most)? WidthRange, double? HeightMm, string HeightBasis, double? PitchMm, int? Pins, string LeadStyle, string Source)
{
    /// <summary>True when an outline table gives the range of the body, so that its limits and not a drawing's copper speak.</summary>
    public bool HasRange => LengthRange is not null || WidthRange is not null;
}
