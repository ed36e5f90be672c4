using Lidoff.Evidence.Folding;

namespace Lidoff.Bench.Data;

/// <summary>An entry as the overview lists it.</summary>
/// <param name="Id">Its id, 64 hex digits.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Say">What it says in a sentence; hostile text.</param>
/// <param name="Fate">What became of it.</param>
/// <param name="By">Who noted it; empty for nobody in particular.</param>
/// <param name="At">When it was noted, UTC.</param>
public sealed record EntryRow(string Id, string Kind, string Say, EntryFate Fate, string By, DateTimeOffset At);
