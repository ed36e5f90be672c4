using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Parts;

/// <summary>Text that hangs together in a tile of a picture.</summary>
/// <param name="Around">The rectangle around its lines, along the longest, px of the picture.</param>
/// <param name="Height">Height of a line, px of the picture.</param>
/// <param name="OnSheet">The same on the finder's sheet: the higher, the closer it was looked at.</param>
internal sealed record TextSpot(PictureRegion Around, double Height, double OnSheet)
{
    // Tiles overlap, and what two of them show whole lies in the same place of both. Choices of ours.
    private const double Near = 0.5;
    private const double Alike = 0.8;

    /// <summary>Whether two tiles saw the same text as large.</summary>
    public bool IsSame(TextSpot other) => Around.Middle.DistanceTo(other.Around.Middle) < Near * Height && AreAlike(Around.Width, other.Around.Width) && AreAlike(Around.Height, other.Around.Height);

    private static bool AreAlike(double a, double b) => Math.Min(a, b) > Alike * Math.Max(a, b);
}
