using Lidoff.Evidence.Grading;
using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Rooms.Reckon;

/// <summary>A computed number, its parts already in words and rounded for print.</summary>
/// <param name="Name">What it is: "runtime".</param>
/// <param name="Value">Value with unit: "103 h".</param>
/// <param name="Interval90">"74 to 144 h".</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="Maturity">"experimental", "checked" or "validated".</param>
/// <param name="Shares">Where its doubt comes from, largest first: "sleep current 71 %".</param>
/// <param name="Source">The formula's source.</param>
/// <param name="Because">Sentences of how it came about: inputs with their values, readings, warnings. Empty where nothing is to be said.</param>
/// <param name="Cautions">Sentences of caution.</param>
public sealed record ReckoningRow(
    string Name,
    string Value,
    string Interval90,
    Grade Grade,
    string Maturity,
    ValueList<string> Shares,
    string Source,
    ValueList<string> Because,
    ValueList<string> Cautions);
