using Lidoff.Bench.Components.Parts.Reading;
using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.See.Reading;

/// <summary>What the machine read on a spot.</summary>
/// <param name="Rows">The newest of each specimen.</param>
/// <param name="Unread">Why it could not be read before, where nothing has changed since.</param>
public sealed record ReadRows(ValueList<ReadingRow> Rows, ValueList<string> Unread);
