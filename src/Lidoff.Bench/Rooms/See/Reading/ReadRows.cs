using Lidoff.Bench.Components.Parts.Reading;
using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.See.Reading;

/// <summary>What the machine read on a spot.</summary>
/// <param name="Rows">The newest of each specimen.</param>
public sealed record ReadRows(ValueList<ReadingRow> Rows);
