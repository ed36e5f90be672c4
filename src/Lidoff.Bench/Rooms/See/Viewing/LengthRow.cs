using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>A length clicked in a picture, with what it comes to.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="Specimen">The specimen it was noted for; empty for none.</param>
/// <param name="Value">What was stored; its part in the picture is there.</param>
/// <param name="Found">What it comes to, or why nothing.</param>
public sealed record LengthRow(EntryId Entry, string Specimen, LengthSighting Value, LengthFound Found);
