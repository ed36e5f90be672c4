using Lidoff.Evidence.Entries;

namespace Lidoff.Opening.Resuming;

/// <summary>What was being done when the bench was left.</summary>
/// <param name="Specimen">The specimen; empty where none was named.</param>
/// <param name="What">What was in hand, or the last step noted.</param>
/// <param name="Next">What was to come next; empty when not said.</param>
/// <param name="Note">Anything else that was said; empty when nothing was.</param>
/// <param name="Said">True when it was said on leaving; false when it is only the last step noted.</param>
/// <param name="Entry">The entry.</param>
/// <param name="At">When it was noted, UTC.</param>
public sealed record InHand(string Specimen, string What, string Next, string Note, bool Said, EntryId Entry, DateTimeOffset At);
