using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>A step that is meant to be done.</summary>
/// <param name="Entry">The entry that counts.</param>
/// <param name="Specimen">The specimen; empty where none was named.</param>
/// <param name="Plan">What was stored.</param>
/// <param name="Waits">Names of plans that come first and are still to be done.</param>
public sealed record PlanRow(EntryId Entry, string Specimen, StepPlanned Plan, ValueList<string> Waits)
{
    /// <summary>What must be recorded first and is not.</summary>
    public IEnumerable<string> Missing => Plan.RecordFirst.Except(Plan.Recorded, StringComparer.Ordinal);
}
