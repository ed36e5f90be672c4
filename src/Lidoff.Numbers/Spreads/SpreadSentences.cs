using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>What is said to a person about spreads that cannot be.</summary>
public static class SpreadSentences
{
    /// <summary>A correlation names an input that is not there, or pairs one with itself.</summary>
    public static Fault NoSuchPair(int a, int b, int count) => new(
        "correlation", "two different inputs",
        string.Create(CultureInfo.InvariantCulture, $"A correlation between inputs {a + 1} and {b + 1} is given, but it must join two different ones of the {count} inputs."));

    /// <summary>A coefficient beyond one.</summary>
    public static Fault CoefficientOutside(int a, int b, double r) => new(
        "correlation", "from -1 to 1",
        string.Create(CultureInfo.InvariantCulture, $"The correlation {r} between inputs {a + 1} and {b + 1} is not between -1 and 1."));

    /// <summary>Coefficients that contradict each other.</summary>
    public static Fault CannotAllHold() => new(
        "correlation", "coefficients that can hold together",
        "These correlations cannot all be true at once: two inputs that both move with a third cannot move against each other that strongly.");
}
