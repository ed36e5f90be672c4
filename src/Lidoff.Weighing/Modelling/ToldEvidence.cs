using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Modelling;

/// <summary>One piece of evidence: its name as the factors have it (mark, body, pins …), what it says, and where it came from.</summary>
public sealed record ToldEvidence(string Evidence, string Says, ValueList<EntryId> From);
