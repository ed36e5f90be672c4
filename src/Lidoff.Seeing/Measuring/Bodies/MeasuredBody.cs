namespace Lidoff.Seeing.Measuring.Bodies;

/// <summary>A body found in a picture, across its middles.</summary>
/// <param name="Id">Name of the target.</param>
/// <param name="Length">The longer side.</param>
/// <param name="Width">The shorter side.</param>
/// <param name="Warnings">What to know about either, each once, in the order of <see cref="WarningCodes"/>.</param>
public sealed record MeasuredBody(string Id, MeasuredLength Length, MeasuredLength Width, IReadOnlyList<MeasureWarning> Warnings);
