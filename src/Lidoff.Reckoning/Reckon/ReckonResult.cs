using Lidoff.Evidence.Entries;

namespace Lidoff.Reckoning.Reckon;

/// <summary>
/// An engineering number with everything a person needs to doubt it rightly. Two results are equal when they would print
/// alike, so that recomputing can stop where nothing moved.
/// </summary>
/// <param name="Info">The calculation.</param>
/// <param name="Value">Value, spread and shares, SI.</param>
/// <param name="Inputs">What was taken for each input, in the order of the calculation.</param>
/// <param name="Cautions">The calculation's own, then those of this very run.</param>
public sealed record ReckonResult(CalculationInfo Info, CalculationValue Value, ValueList<ReckonedInput> Inputs, ValueList<string> Cautions)
{
    /// <inheritdoc/>
    public bool Equals(ReckonResult? other) =>
        other is not null && Info.Name == other.Info.Name && Numbers(Value).Equals(Numbers(other.Value))
        && Value.Shares.SequenceEqual(other.Value.Shares) && Inputs.Equals(other.Inputs) && Cautions.Equals(other.Cautions);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Info.Name, Numbers(Value));

    private static (double, double, double, double, double, double) Numbers(CalculationValue value) =>
        (value.Value, value.U, value.Median, value.Interval90.Low, value.Interval90.High, value.FirstOrderU);
}
