using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Quarrels;

/// <summary>One way out of a quarrel: the entries to leave out, and how likely it is that they are the wrong ones.</summary>
public sealed record Diagnosis(ValueList<EntryId> Drop, double P);
