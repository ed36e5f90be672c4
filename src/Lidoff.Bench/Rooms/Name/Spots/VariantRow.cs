using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.Name.Spots;

/// <summary>The mark of a spot on one specimen.</summary>
/// <param name="Specimen">The specimen; empty where none was named.</param>
/// <param name="Entry">The mark's entry.</param>
/// <param name="Lines">Its lines, from the top.</param>
/// <param name="Differs">True when another specimen's mark reads otherwise.</param>
public sealed record VariantRow(string Specimen, EntryId Entry, ValueList<MarkLine> Lines, bool Differs);
