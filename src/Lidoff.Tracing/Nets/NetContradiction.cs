using Lidoff.Evidence.Entries;

namespace Lidoff.Tracing.Nets;

/// <summary>
/// Entries about one net that do not go together: a shortest chain that joins two points, and what says that they are apart or that
/// they are two nets. It is said and not resolved.
/// </summary>
/// <param name="Net">The net's name.</param>
/// <param name="Members">The entries, in id order.</param>
/// <param name="Say">The sentence.</param>
/// <param name="Impossible">False where a jumper or a sense resistor would explain it: two names for one net.</param>
public sealed record NetContradiction(string Net, ValueList<EntryId> Members, string Say, bool Impossible);
