using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Failing;
using Lidoff.Reckoning.Reckon;

namespace Lidoff.Reckoning.Bound;

/// <summary>A reckoning of the dossier as it stands now.</summary>
/// <param name="Binding">What was bound.</param>
/// <param name="Result">The number; null when there are faults.</param>
/// <param name="Faults">Why there is no number, all at once; empty when there is one.</param>
/// <param name="Grade">How well it is known; E0 without a number.</param>
/// <param name="RestsOn">The binding's own entry and all that its inputs lean on, in id order.</param>
public sealed record BoundReckoning(
    ReckonBinding Binding, ReckonResult? Result, ValueList<Fault> Faults, Grade Grade, ValueList<EntryId> RestsOn);
