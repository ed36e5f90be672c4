using Lidoff.Evidence.Entries;
using Lidoff.Bench.Rooms.Trace.Book;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>A touch in the table.</summary>
/// <param name="Entry">Its entry.</param>
/// <param name="A">One point.</param>
/// <param name="B">The other.</param>
/// <param name="Reading">What the meter showed, in words.</param>
/// <param name="Kind">The stroke it is drawn with.</param>
/// <param name="Specimen">The specimen; empty where none was named.</param>
public sealed record TouchRow(EntryId Entry, string A, string B, string Reading, StringKind Kind, string Specimen);
