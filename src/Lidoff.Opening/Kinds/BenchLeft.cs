using Lidoff.Evidence.Entries;

namespace Lidoff.Opening.Kinds;

/// <summary>What somebody said on leaving the bench, for whoever comes back to it.</summary>
/// <param name="InHand">What was in hand; empty when not said.</param>
/// <param name="Next">What was to come next; empty when not said.</param>
/// <param name="Checked">Keys of the closing list that were ticked.</param>
/// <param name="Note">Anything else; empty when nothing was said.</param>
public sealed record BenchLeft(string InHand, string Next, ValueList<string> Checked, string Note);
