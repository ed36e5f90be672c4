using Lidoff.Numbers.Spreads;

namespace Lidoff.Reckoning.Reckon;

/// <summary>What a calculation took for one input.</summary>
/// <param name="Input">The input.</param>
/// <param name="Value">Value and doubt, SI.</param>
/// <param name="Given">What was typed, or the reference it came by; empty where the default was assumed.</param>
public sealed record ReckonedInput(CalculationInput Input, Uncertain Value, string Given)
{
    /// <summary>True when nothing was given and the default stands in.</summary>
    public bool Assumed => Given.Length == 0;
}
