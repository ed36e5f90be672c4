namespace Lidoff.Seeing.Kinds;

/// <summary>A moment of a video that matters, tied to a spot where one was selected.</summary>
/// <param name="Recording">The recording's short name, or the name or hash of a video file.</param>
/// <param name="Second">Time in it, s from its beginning.</param>
/// <param name="Spot">The spot it is about; empty for none.</param>
/// <param name="Says">What was seen; may be empty. Hostile text.</param>
public sealed record MomentSighting(string Recording, double Second, string Spot, string Says);
