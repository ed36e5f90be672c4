namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// A known length as it shows: the chord, its length with standard uncertainty (clicks and length together) and its height, mm. Where it stands for a <paramref name="Target"/>
/// the target's places count instead, and the uncertainty is that of its pitch, over this length. A <paramref name="Carried"/> one is the scale where the camera's axis meets the board,
/// known from another picture: it says nothing of how this one leans.
/// </summary>
internal readonly record struct SeenReference(SeenChord Chord, double LengthMm, double UMm, double HeightMm, SeenTarget? Target = null, bool Carried = false)
{
    /// <summary>Its length on a board one unit away under a pose.</summary>
    public double Unit(in CameraPose pose, double focal) => Carried ? (pose with { Right = 0, Down = 0 }).Unit(Chord, focal) : pose.Unit(Chord, focal);

    /// <summary>Relative standard uncertainty of the length.</summary>
    public double RelativeU => UMm / LengthMm;
}
