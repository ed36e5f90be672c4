namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// A known length as it shows: the chord, its length with standard uncertainty (clicks and length together) and its height, mm. Where it stands for a <paramref name="Target"/>
/// the target's places count instead, and the uncertainty is that of its pitch, over this length.
/// </summary>
internal readonly record struct SeenReference(SeenChord Chord, double LengthMm, double UMm, double HeightMm, SeenTarget? Target = null)
{
    /// <summary>Relative standard uncertainty of the length.</summary>
    public double RelativeU => UMm / LengthMm;
}
