using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Working;

/// <summary>Something a person did at the bench that can be taken back: what it was in words, and the entries it stored.</summary>
/// <param name="Says">"spot U3", "picture board.jpg".</param>
/// <param name="Entries">What it stored, in order.</param>
public sealed record Act(string Says, ValueList<EntryId> Entries);
