using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Reading.Finding;

/// <summary>A pin-1 dot.</summary>
/// <param name="At">Its middle.</param>
/// <param name="P">Probability of its surest cell, 0 to 1.</param>
public sealed record FoundDot(PicturePoint At, double P);
