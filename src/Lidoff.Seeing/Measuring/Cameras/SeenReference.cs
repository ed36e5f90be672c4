namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>A known length as it shows: the chord, its length with standard uncertainty (clicks and length together) and its height, mm.</summary>
internal readonly record struct SeenReference(SeenChord Chord, double LengthMm, double UMm, double HeightMm);
