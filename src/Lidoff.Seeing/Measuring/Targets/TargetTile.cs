using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Targets;

/// <summary>A known place that stands for all places of one part of a target.</summary>
/// <param name="At">Where it shows, px; of dots where the circle's own middle shows.</param>
/// <param name="Column">Steps along the target, from any corner; a part of a step where it stands between places.</param>
/// <param name="Row">Steps across.</param>
/// <param name="U">Standard uncertainty of each coordinate, steps.</param>
public sealed record TargetTile(PicturePoint At, double Column, double Row, double U);
