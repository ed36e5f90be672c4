using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Quarrels;

/// <summary>
/// Sightings that cannot all be true, none of which can be left out. <paramref name="Settle"/> is what would settle it, in about
/// <paramref name="Minutes"/> min (common practice, no source).
/// </summary>
public sealed record Quarrel(string Rule, ValueList<EntryId> Members, string Say, string Settle, double Minutes = 2)
{
    /// <summary>
    /// What could be wrong, likeliest first: dropping any one member ends a quarrel from which none can be left out. Blunder rates are
    /// not weighed yet, so each is as likely as the next.
    /// </summary>
    public ValueList<Diagnosis> Diagnoses { get; init; } = [.. Members.Select(member => new Diagnosis([member], 1.0 / Members.Count))];
}
