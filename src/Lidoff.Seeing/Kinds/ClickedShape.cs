using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A circle, pitch, angle or area by places clicked in a picture (file name, entry id or start of the file's hash), their height above the
/// board (mm) and the click error (px). <paramref name="What"/> says which of the spot's: "diameter", "bore", "outline".
/// </summary>
public sealed record ClickedShape(string Spot, string What, ShapeKind Shape, string Picture, ValueList<PicturePoint> Points, double HeightMm, double ClickPx);
