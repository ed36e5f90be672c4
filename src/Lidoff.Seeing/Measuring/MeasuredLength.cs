using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Measuring;

/// <summary>A length found in a picture.</summary>
/// <param name="Id">Name of the target.</param>
/// <param name="ValueMm">Best value, mm.</param>
/// <param name="UMm">Standard uncertainty, mm.</param>
/// <param name="LowMm">Lower end of the 90 % interval, mm.</param>
/// <param name="HighMm">Upper end of the 90 % interval, mm.</param>
/// <param name="ScaleShare">
/// The part of the relative standard uncertainty that comes from the scale, and is therefore shared with every other length of the
/// same picture; the rest is this length's own clicks and height.
/// </param>
/// <param name="Snap">The standard size it must be, or null where the evidence does not reach ten to one.</param>
/// <param name="Warnings">What to know about it, in the order of <see cref="WarningCodes"/>; empty for a clean one.</param>
public sealed record MeasuredLength(
    string Id,
    double ValueMm,
    double UMm,
    double LowMm,
    double HighMm,
    double ScaleShare,
    StandardSnap? Snap,
    IReadOnlyList<MeasureWarning> Warnings);
