using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Tests.Calculating;

/// <summary>What a formula of a test says of itself: pure numbers, any value allowed.</summary>
public static class TestInfo
{
    public static CalculationInfo Of(string source, params string[] keys) => new(
        "test", "A formula of a test.", Units.One,
        [.. keys.Select(key => new CalculationInput(key, Units.One, double.NegativeInfinity, double.PositiveInfinity, key))],
        source, Maturity.Checked, []);
}
