using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>One way to read a code on a passive part: value in SI, unit, the tolerances its letter may mean, and the rule it was read by.</summary>
public sealed record CodeReading(double Si, Unit Unit, string Rule, IReadOnlyList<Tolerance> Tolerances)
{
    /// <inheritdoc/>
    public override string ToString() => $"{QuantityText.Value(Si, Unit, 6)} ({Rule})";
}
