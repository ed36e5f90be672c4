using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Measuring.Shapes;

/// <summary>A circle, pitch, angle or area found in a picture.</summary>
/// <param name="Id">Name of the target.</param>
/// <param name="Kind">What was asked for: it says the unit, mm, mm² or degrees.</param>
/// <param name="Value">Best value.</param>
/// <param name="U">Standard uncertainty.</param>
/// <param name="Low">Lower end of the 90 % interval.</param>
/// <param name="High">Upper end of the 90 % interval.</param>
/// <param name="ScaleShare">The part of the relative standard uncertainty that comes from the scale, shared with whatever else is measured in the picture.</param>
/// <param name="Gaps">Of a pitch: how many gaps lie between the first place and the last, those of places left out included; otherwise 0.</param>
/// <param name="Snap">Of a pitch: the standard one it must be, or null where the evidence does not reach ten to one.</param>
/// <param name="Warnings">What to know about it, in the order of <see cref="WarningCodes"/>.</param>
public sealed record MeasuredShape(
    string Id, ShapeKind Kind, double Value, double U, double Low, double High, double ScaleShare, int Gaps, StandardSnap? Snap, IReadOnlyList<MeasureWarning> Warnings);
