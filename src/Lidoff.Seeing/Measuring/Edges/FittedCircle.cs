using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>A circle whose edge was looked for.</summary>
/// <param name="Middle">Its middle.</param>
/// <param name="RadiusPx">Its radius, px.</param>
/// <param name="URadiusPx">Standard uncertainty of the radius, px.</param>
/// <param name="ShiftPx">By how much the radius grew over the clicked one, px.</param>
/// <param name="Points">Places on the edge, evenly around, which stand for it in a shape.</param>
/// <param name="EachPx">Standard uncertainty of each of these places so that the diameter by them has the right one, px.</param>
/// <param name="Trouble">Why it stayed as clicked, one sentence; empty where it was found.</param>
public sealed record FittedCircle(PicturePoint Middle, double RadiusPx, double URadiusPx, double ShiftPx, ValueList<PicturePoint> Points, double EachPx, string Trouble)
{
    /// <summary>True where an edge was found.</summary>
    public bool OnEdge => Trouble.Length == 0;
}
