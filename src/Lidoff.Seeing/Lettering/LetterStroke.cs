using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Lettering;

/// <summary>One run of the pen: at least two points, x to the right and y down. A dot is a run whose points are equal.</summary>
public sealed record LetterStroke(IReadOnlyList<PicturePoint> Points);
