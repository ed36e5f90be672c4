using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Calculating;

/// <summary>
/// What a person needs to know of a calculation: snake-case name, one sentence of what it gives, the unit of its value, its
/// inputs in the order in which the formula takes them, the published source of the formula, maturity, and cautions that
/// are printed with every value.
/// </summary>
public sealed record CalculationInfo(
    string Name,
    string Says,
    Unit Unit,
    IReadOnlyList<CalculationInput> Inputs,
    string Source,
    Maturity Maturity,
    IReadOnlyList<string> Cautions);
