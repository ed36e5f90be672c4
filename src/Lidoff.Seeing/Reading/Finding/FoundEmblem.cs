namespace Lidoff.Seeing.Reading.Finding;

/// <summary>A mark that is no text, such as a maker's emblem. It is kept as a place and never named.</summary>
/// <param name="Outline">The smallest rectangle around it.</param>
/// <param name="P">Mean probability of its cells, 0 to 1.</param>
public sealed record FoundEmblem(PictureRegion Outline, double P);
