using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A circle, pitch, angle or area by places clicked in a picture (file name, entry id or start of the file's hash), their height above the
/// board (mm) and the click error (px). <paramref name="What"/> says which of the spot's: "diameter", "bore", "outline".
/// </summary>
public sealed record ClickedShape(string Spot, string What, ShapeKind Shape, string Picture, ValueList<PicturePoint> Points, double HeightMm, double ClickPx)
{
    /// <summary>What moved the places onto an edge ("edges 2"); empty where they lie as clicked.</summary>
    public string EndsBy { get; init; } = "";

    /// <summary>Where a person clicked, where the places were moved from there.</summary>
    public ValueList<PicturePoint> Clicked { get; init; } = [];
}
