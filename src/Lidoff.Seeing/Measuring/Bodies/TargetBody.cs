using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;

namespace Lidoff.Seeing.Measuring.Bodies;

/// <summary>A rectangular body to measure: roughly where its corners lie, its sides being looked for near them.</summary>
/// <param name="Id">Name as the asker wrote it; hostile text.</param>
/// <param name="Corners">Three or four corners, one after the other around it; three of a rectangle are enough.</param>
/// <param name="HeightMm">Height of all of them above the board, mm, positive towards the camera (default 0).</param>
/// <param name="ClickPx">Standard uncertainty of each corner, px, zero or more; null for that of the job.</param>
/// <param name="Boxed">True where they are those of an upright box, which a fault then names.</param>
public sealed record TargetBody(string Id, IReadOnlyList<PicturePoint> Corners, double HeightMm = 0, double? ClickPx = null, bool Boxed = false)
{
    /// <summary>Standard uncertainty of the corners of a box drawn around a body by hand, px, where none is given. A judgement.</summary>
    public const double BoxPx = 3;

    /// <summary>Its sides as they were found; null where nobody looked, so that its corners count as they are.</summary>
    public FittedBody? Fitted { get; init; }

    /// <summary>What a fault of a corner names.</summary>
    internal string Where(int corner) => Boxed ? "box" : $"points[{corner}]";
}
