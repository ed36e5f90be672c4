using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Trace;

/// <summary>A box of a drawing, as it is listed from top to bottom where the drawing would be too small to read.</summary>
/// <param name="Name">Its name; hostile text.</param>
/// <param name="Words">What else stands in it; hostile text.</param>
/// <param name="Leads">Where lines go from it: what stands on them, whether they are guesses, and the boxes at their ends; hostile text.</param>
public sealed record DiagramStep(string Name, string Words, ValueList<(string Label, bool Guess, ValueList<string> To)> Leads);
