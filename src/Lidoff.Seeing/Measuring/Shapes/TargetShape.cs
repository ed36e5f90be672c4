using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Shapes;

/// <summary>A circle, pitch, angle or area to find.</summary>
/// <param name="Id">Name as the asker wrote it; hostile text.</param>
/// <param name="Kind">What is asked for.</param>
/// <param name="Points">Clicked places; three for an angle, three or more otherwise.</param>
/// <param name="HeightMm">Height of all of them above the board, mm, positive towards the camera (default 0).</param>
/// <param name="ClickPx">Standard uncertainty of each place, px, zero or more; null for that of the job.</param>
public sealed record TargetShape(string Id, ShapeKind Kind, IReadOnlyList<PicturePoint> Points, double HeightMm = 0, double? ClickPx = null)
{
    /// <summary>The two places furthest apart, whose chord shows what the camera does to the whole.</summary>
    internal TargetLength Longest()
    {
        var (from, to) = (Points[0], Points[1]);
        foreach (var a in Points)
        {
            foreach (var b in Points) if (a.DistanceTo(b) > from.DistanceTo(to)) (from, to) = (a, b);
        }

        return new(Id, from, to, HeightMm);
    }
}
