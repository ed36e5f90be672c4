using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Grading;

namespace Lidoff.Bench.Rooms.Reckon;

/// <summary>A number in the list, in words and rounded for print.</summary>
/// <param name="Designator">"R1"; empty for a measured length.</param>
/// <param name="Reference">What a claim writes to lean on it.</param>
/// <param name="Says">The question it answers, or what was measured.</param>
/// <param name="Value">Value with its doubt; "unknown" where there is none.</param>
/// <param name="Interval90">"74 to 144 h"; empty where there is none.</param>
/// <param name="Grade">How well it is known.</param>
/// <param name="Maturity">"experimental", "checked" or "validated"; empty for a length.</param>
/// <param name="Calculation">Name of the formula; empty for a length.</param>
/// <param name="Shares">Where its doubt comes from, largest first.</param>
/// <param name="Missing">Why there is no value; empty when there is one.</param>
public sealed record NumberRow(
    string Designator, string Reference, string Says, string Value, string Interval90, Grade Grade, string Maturity, string Calculation, ValueList<ShareRow> Shares, string Missing);
