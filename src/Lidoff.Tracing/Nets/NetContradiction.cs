using Lidoff.Evidence.Entries;

namespace Lidoff.Tracing.Nets;

/// <summary>
/// Entries about one net that cannot all be true: a shortest chain that joins two points, and what says that they are apart or that
/// they are two nets. It is said and not resolved.
/// </summary>
public sealed record NetContradiction(string Net, ValueList<EntryId> Members, string Say);
