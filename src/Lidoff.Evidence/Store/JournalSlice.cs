using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>Entries in the order in which this store took them, which is an order in which every link points backwards.</summary>
/// <param name="Entries">The entries.</param>
/// <param name="UpTo">Arrival number of the newest one seen; reading after it brings what came since.</param>
/// <param name="Damaged">Rows whose bytes no longer fit their hash, one sentence each; they are left out, the rest is here.</param>
public sealed record JournalSlice(IReadOnlyList<StoredEntry> Entries, long UpTo, IReadOnlyList<Fault> Damaged);
