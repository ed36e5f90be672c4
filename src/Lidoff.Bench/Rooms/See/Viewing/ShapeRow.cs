using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A shape clicked in a picture, with what it comes to.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Specimen">The specimen it was noted for; empty for none.</param>
/// <param name="Value">What was stored.</param>
/// <param name="Found">What it comes to, or why nothing.</param>
public sealed record ShapeRow(EntryId Entry, string Specimen, ClickedShape Value, LengthFound Found);
