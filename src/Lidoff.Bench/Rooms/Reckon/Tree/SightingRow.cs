using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Reckon.Tree;

/// <summary>An entry that a number rests on, down to the file it came with.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Says">What it says, as stored.</param>
/// <param name="FileName">Name of the raw file behind it; empty where there is none.</param>
/// <param name="Sha256">Its hash; empty where there is none.</param>
public sealed record SightingRow(EntryId Entry, string Kind, string Says, string FileName, string Sha256);
