using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Calculating;

/// <summary>One engineering formula, written once for every number type. Inputs and value are SI.</summary>
public interface IFormula
{
    /// <summary>The formula; <paramref name="x"/> holds the inputs in the order of its <see cref="CalculationInfo"/>.</summary>
    static abstract T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T>;
}
