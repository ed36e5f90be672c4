using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Quantities;

/// <summary>
/// A number with its dimension, held in SI. Adding, subtracting or comparing different dimensions is a programmer's mistake
/// and throws; what people type goes through <see cref="Plus(Quantity, string)"/> and gets a sentence instead. A temperature is
/// absolute, in kelvin.
/// </summary>
/// <param name="Si">The value in SI, finite.</param>
/// <param name="Dimension">Its dimension.</param>
public readonly record struct Quantity(double Si, Dimension Dimension)
{
    /// <summary>A value in a unit: <c>Quantity.Of(45, Units.MilliampereHour)</c> is 162 C.</summary>
    public static Quantity Of(double value, Unit unit) => new(unit.ToSi(Guard.Finite(value)), unit.Dimension);

    /// <summary>The value in a unit of the same dimension.</summary>
    public double In(Unit unit)
    {
        Guard.That(unit.Dimension == Dimension, QuantitySentences.SameDimension(Dimension, unit.Dimension));
        return unit.FromSi(Si);
    }

    /// <summary>The sum, or a fault that says what both are.</summary>
    public Outcome<Quantity> Plus(Quantity other, string where) => Dimension == other.Dimension
        ? this + other
        : new Fault(where, Dimensions.Name(Dimension), QuantitySentences.DoNotAdd(Dimension, other.Dimension));

    /// <summary>The difference, or a fault that says what both are.</summary>
    public Outcome<Quantity> Minus(Quantity other, string where) => Plus(other with { Si = -other.Si }, where);

    /// <summary>Sum of two quantities of one dimension.</summary>
    public static Quantity operator +(Quantity a, Quantity b) => new(a.Si + Same(a, b).Si, a.Dimension);

    /// <summary>Difference of two quantities of one dimension.</summary>
    public static Quantity operator -(Quantity a, Quantity b) => new(a.Si - Same(a, b).Si, a.Dimension);

    /// <summary>The negative.</summary>
    public static Quantity operator -(Quantity a) => a with { Si = -a.Si };

    /// <summary>Product; dimensions multiply.</summary>
    public static Quantity operator *(Quantity a, Quantity b) => new(a.Si * b.Si, a.Dimension * b.Dimension);

    /// <summary>Quotient; dimensions divide.</summary>
    public static Quantity operator /(Quantity a, Quantity b) => new(a.Si / b.Si, a.Dimension / b.Dimension);

    /// <summary>A multiple.</summary>
    public static Quantity operator *(double factor, Quantity a) => a with { Si = factor * a.Si };

    /// <summary>True when <paramref name="a"/> is smaller; one dimension.</summary>
    public static bool operator <(Quantity a, Quantity b) => a.Si < Same(a, b).Si;

    /// <summary>True when <paramref name="a"/> is larger; one dimension.</summary>
    public static bool operator >(Quantity a, Quantity b) => a.Si > Same(a, b).Si;

    private static Quantity Same(Quantity a, Quantity b)
    {
        Guard.That(a.Dimension == b.Dimension, QuantitySentences.SameDimension(a.Dimension, b.Dimension));
        return b;
    }
}
