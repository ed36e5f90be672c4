using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Reckoning.Bound;

/// <summary>What the dossier knows under a reference.</summary>
/// <param name="Value">Value and doubt, SI. Where it names a source, inputs of the same source share a draw.</param>
/// <param name="Dimension">What kind of quantity it is.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="RestsOn">The entries it leans on, in id order.</param>
public sealed record SourcedInput(Uncertain Value, Dimension Dimension, Grade Grade, ValueList<EntryId> RestsOn);
