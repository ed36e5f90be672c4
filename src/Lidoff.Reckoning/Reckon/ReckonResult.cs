namespace Lidoff.Reckoning.Reckon;

/// <summary>An engineering number with everything a person needs to doubt it rightly.</summary>
/// <param name="Info">The calculation.</param>
/// <param name="Value">Value, spread and shares, SI.</param>
/// <param name="Inputs">What was taken for each input, in the order of the calculation.</param>
/// <param name="Cautions">The calculation's own, then those of this very run.</param>
public sealed record ReckonResult(CalculationInfo Info, CalculationValue Value, IReadOnlyList<ReckonedInput> Inputs, IReadOnlyList<string> Cautions);
