using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;

namespace Lidoff.Weighing.Questions;

/// <summary>A claim as a question sees it; made by whoever reads claims, which stand to the right of this project.</summary>
/// <param name="Name">Its name, such as C1.</param>
/// <param name="Text">As it reads today.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="Stale">True when it does not say what was published of it.</param>
/// <param name="Unsupported">True when something in its braces has no value and nobody was told otherwise: it waits for a measurement.</param>
/// <param name="References">What stands in its braces.</param>
/// <param name="RestsOn">Every entry it rests on, its own first.</param>
public sealed record TiedClaim(string Name, string Text, Grade Grade, bool Stale, bool Unsupported, ValueList<string> References, ValueList<EntryId> RestsOn);
