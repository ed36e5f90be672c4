using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Blocks;

/// <summary>A line of the diagram; it cites what it stands for or is a guess.</summary>
/// <param name="From">One block.</param>
/// <param name="To">The other.</param>
/// <param name="Sort">What it is.</param>
/// <param name="Cites">The rail, bus or nets it stands for, in natural order; a guess may cite none.</param>
/// <param name="Label">What stands on it.</param>
/// <param name="Guess">True where nothing but a likeness speaks for it.</param>
/// <param name="Entries">The entries it rests on, in id order.</param>
public sealed record BlockLine(string From, string To, LineSort Sort, ValueList<string> Cites, string Label, bool Guess, ValueList<EntryId> Entries);
