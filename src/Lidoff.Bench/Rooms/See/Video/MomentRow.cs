using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.See.Video;

/// <summary>A moment of a video.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Second">Where in the video, s.</param>
/// <param name="Spot">Its spot; empty for none. Hostile text, like the next.</param>
/// <param name="Says">What was seen; may be empty.</param>
public sealed record MomentRow(EntryId Entry, double Second, string Spot, string Says);
