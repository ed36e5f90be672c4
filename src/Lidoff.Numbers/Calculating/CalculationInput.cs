using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Calculating;

/// <summary>
/// One input of a calculation: <paramref name="Key"/> in snake case as typed on the command line, the unit people give it
/// in, the allowed SI range (both ends included), what it is, and a default SI value where leaving it out is sensible
/// (null: it must be given).
/// </summary>
public sealed record CalculationInput(string Key, Unit Unit, double Least, double Most, string Says, double? Default = null);
