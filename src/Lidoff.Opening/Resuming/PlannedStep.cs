using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;

namespace Lidoff.Opening.Resuming;

/// <summary>A planned step as it stands.</summary>
/// <param name="Plan">What was planned.</param>
/// <param name="Specimen">The specimen it is planned for; empty where none was named.</param>
/// <param name="Entry">The entry of the plan.</param>
/// <param name="State">Done, open or waiting.</param>
/// <param name="Waits">Names of the plans it waits for, in natural order.</param>
/// <param name="First">What must be recorded before, in the order written.</param>
public sealed record PlannedStep(StepPlanned Plan, string Specimen, EntryId Entry, PlanState State, ValueList<string> Waits, ValueList<RecordedFirst> First)
{
    /// <summary>What must be recorded before and is not.</summary>
    public IEnumerable<string> NotRecorded => First.Where(each => !each.Done).Select(each => each.What);
}
