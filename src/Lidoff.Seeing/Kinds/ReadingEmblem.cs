using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Kinds;

/// <summary>A mark in the first picture of a reading that is no text. It is shown as it lies there and never named.</summary>
/// <param name="Outline">Four corners, px, clockwise.</param>
/// <param name="P">How surely it is one, 0 to 1.</param>
public sealed record ReadingEmblem(ValueList<PicturePoint> Outline, double P)
{
    /// <summary>What is cut out to show it: the smallest rectangle around it along a direction of text, with a little around it.</summary>
    /// <param name="turnDeg">Clockwise turn that makes the mark upright, degrees.</param>
    public PictureRegion Piece(double turnDeg)
    {
        var frame = new PictureRegion(default, 1, 1, -turnDeg * Math.PI / 180);
        var inside = Outline.Select(frame.Inside).ToList();
        var (left, right, top, foot) = (inside.Min(p => p.X), inside.Max(p => p.X), inside.Min(p => p.Y), inside.Max(p => p.Y));
        return new PictureRegion(frame.At((left + right) / 2, (top + foot) / 2), Math.Max(1, right - left), Math.Max(1, foot - top), frame.Turn).Grown(0.1 * Math.Max(right - left, foot - top));
    }
}
