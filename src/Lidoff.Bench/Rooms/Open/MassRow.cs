using Lidoff.Evidence.Entries;
using Lidoff.Opening.Kinds;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>Something that was weighed.</summary>
/// <param name="Noted">What was stored.</param>
/// <param name="Step">The step at which it was weighed, as it is named now; null where that was not said, or the step was taken back.</param>
public sealed record MassRow(Noted<MassSighting> Noted, EntryId? Step);
