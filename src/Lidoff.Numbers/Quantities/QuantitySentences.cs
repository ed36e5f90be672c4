using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Quantities;

/// <summary>What people read when units do not go together.</summary>
public static class QuantitySentences
{
    /// <summary>Two dimensions that were to be added.</summary>
    public static string DoNotAdd(Dimension a, Dimension b) =>
        $"{Capital(Dimensions.Name(a))} and {Dimensions.Name(b)} do not add.{Bridge(a, b)}";

    /// <summary>A value whose unit is of another kind than what is asked for.</summary>
    public static string WrongDimension(string typed, Unit typedUnit, Unit expected) =>
        $"{typed} is in {typedUnit.Symbol}, which is {Dimensions.Name(typedUnit.Dimension)}; here {Dimensions.Name(expected.Dimension)} is wanted, for example in {expected.Symbol}."
        + Bridge(typedUnit.Dimension, expected.Dimension);

    /// <summary>Said to a programmer.</summary>
    public static string SameDimension(Dimension a, Dimension b) => $"one dimension, not {Dimensions.Name(a)} with {Dimensions.Name(b)}";

    /// <summary>No unit was found.</summary>
    public static Fault NoUnit(string where) => new(where, "a unit", "A unit is missing.");

    /// <summary>A text that is too long for a unit.</summary>
    public static Fault TooLong(string where, int length, int most) =>
        new(where, $"at most {most} characters", $"A unit of {length} characters is too long; at most {most} are read.");

    /// <summary>A symbol nobody knows.</summary>
    public static Fault UnknownUnit(string where, string symbol, IReadOnlyList<string> near) => near.Count switch
    {
        0 => new(where, "a unit such as mm, mAh, kΩ", $"I do not know the unit \"{symbol}\"."),
        1 => new(where, near[0], $"I do not know the unit \"{symbol}\". Is it {near[0]}?"),
        _ => new(where, string.Join(" or ", near), $"I do not know the unit \"{symbol}\". Is it {string.Join(" or ", near)}?"),
    };

    /// <summary>Decibels: a ratio of powers or of voltages, with or without a reference.</summary>
    public static Fault Decibel(string where, string symbol) =>
        new(where, "a plain ratio, or W or V", $"\"{symbol}\" can be a ratio of powers or of voltages: give the plain ratio, or the value in W or V.");

    /// <summary>A unit that is added to itself in a way that has no meaning, as °C in a product.</summary>
    public static Fault OffsetInProduct(string where, string symbol) =>
        new(where, "K", $"{symbol} cannot stand in a product or quotient, because its zero is not zero: write K for a difference.");

    /// <summary>An exponent out of range.</summary>
    public static Fault BadExponent(string where, string text) =>
        new(where, "an exponent from -9 to 9", $"The exponent in \"{text}\" cannot be read: write it as m^2 or m².");

    /// <summary>A number where the unit has ended.</summary>
    public static Fault NumberBehindUnit(string where) =>
        new(where, "± before the doubt", "A number stands behind the unit: write a doubt with ±, as in 26 mm ± 0.05.");

    private static string Bridge(Dimension a, Dimension b)
    {
        if (a == Dimension.None || b == Dimension.None) return "";
        // A time bridges current and charge; nobody looks for the frequency that does it the other way round.
        var factor = Dimensions.HasName(a / b) && a / b != Dimensions.Frequency && a / b != Dimensions.Conductance ? a / b : b / a;
        if (!Dimensions.HasName(factor) || factor == Dimension.None) return "";
        var name = Dimensions.Name(factor);
        return $" {("aeiou".Contains(name[0], StringComparison.Ordinal) ? "An" : "A")} {name} turns one into the other.";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
