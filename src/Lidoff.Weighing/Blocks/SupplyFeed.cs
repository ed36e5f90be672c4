using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Blocks;

/// <summary>One part feeds another over a rail.</summary>
/// <param name="From">The node that feeds.</param>
/// <param name="To">The node that is fed.</param>
/// <param name="Rail">The rail.</param>
/// <param name="V">Its voltage, V; null when not known.</param>
/// <param name="Net">The net it is; empty when none was traced.</param>
/// <param name="Guess">True where nobody drew it: only the voltage measured at the part fits.</param>
/// <param name="Entry">The entry it cites: the rail, or the supply measured.</param>
public sealed record SupplyFeed(string From, string To, string Rail, double? V, string Net, bool Guess, EntryId Entry);
