using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;

namespace Lidoff.Weighing.Questions;

/// <summary>What one reference of a question says today.</summary>
/// <param name="Reference">The reference.</param>
/// <param name="Says">What it is, in words ("long side of U1").</param>
/// <param name="Printed">Its value as people write it; empty where there is none.</param>
/// <param name="Spread">The 90 % interval of a number, or the rivals of a name; empty where there is neither.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="Decided">False where it is a part that nothing names clearly.</param>
/// <param name="Missing">Why there is no value; empty where there is one.</param>
/// <param name="RestsOn">The entries it rests on.</param>
public sealed record TieAnswer(string Reference, string Says, string Printed, string Spread, Grade Grade, bool Decided, string Missing, ValueList<EntryId> RestsOn);
