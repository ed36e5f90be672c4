using Lidoff.Evidence.Entries;

namespace Lidoff.Weighing.Modelling;

/// <summary>Every reading of one shape, in fold order, and for those that led nowhere the sentence why.</summary>
public sealed record ShapeBelief(ValueList<ShapeReading> Readings, ValueList<string> Problems);
