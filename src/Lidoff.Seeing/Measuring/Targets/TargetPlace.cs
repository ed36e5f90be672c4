using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>One corner or dot of a target.</summary>
/// <param name="At">Where it shows, px of the upright picture. Of a dot the middle of its ellipse.</param>
/// <param name="Column">Its number along the target, from any corner.</param>
/// <param name="Row">Its number across.</param>
public sealed record TargetPlace(PicturePoint At, int Column, int Row);
