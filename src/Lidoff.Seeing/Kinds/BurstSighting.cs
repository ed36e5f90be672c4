using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>Frames of a camera that stood still, taken one right after the other: what a mean of them, or a stack, is made of.</summary>
/// <param name="Burst">Its short name.</param>
/// <param name="Frames">Content hashes of its frames, in the order they were taken.</param>
/// <param name="Zoom">Zoom tag of all of them; may be empty. Hostile text, like the two after it.</param>
/// <param name="Light">How they were lit.</param>
/// <param name="Camera">Which camera took them.</param>
public sealed record BurstSighting(string Burst, ValueList<string> Frames, string Zoom, string Light, string Camera);
