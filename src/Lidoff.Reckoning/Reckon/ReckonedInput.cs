using Lidoff.Numbers.Spreads;

namespace Lidoff.Reckoning.Reckon;

/// <summary>What a calculation took for one input; equal to another when key, text and numbers are.</summary>
/// <param name="Input">The input.</param>
/// <param name="Value">Value and doubt, SI.</param>
/// <param name="Given">What was typed, or the reference it came by; empty where the default was assumed.</param>
public sealed record ReckonedInput(CalculationInput Input, Uncertain Value, string Given)
{
    /// <summary>True when nothing was given and the default stands in.</summary>
    public bool Assumed => Given.Length == 0;

    /// <inheritdoc/>
    public bool Equals(ReckonedInput? other) =>
        other is not null && Input.Key == other.Input.Key && Given == other.Given && Value.Value.Equals(other.Value.Value) && Value.U.Equals(other.Value.U);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Input.Key, Given, Value.Value, Value.U);
}
