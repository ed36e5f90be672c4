namespace Lidoff.Numbers.Quantities;

/// <summary>
/// Exponents of length, mass, time, current, temperature, amount and luminous intensity. Quantities of different dimension
/// never add: mAh and mA·s share one (I·T), mAh and mWh do not.
/// </summary>
public readonly record struct Dimension(
    sbyte Length = 0, sbyte Mass = 0, sbyte Time = 0, sbyte Current = 0, sbyte Temperature = 0, sbyte Amount = 0, sbyte Light = 0)
{
    /// <summary>A pure number.</summary>
    public static Dimension None => default;

    /// <summary>The dimension of a product.</summary>
    public static Dimension operator *(Dimension a, Dimension b) => new(
        (sbyte)(a.Length + b.Length), (sbyte)(a.Mass + b.Mass), (sbyte)(a.Time + b.Time), (sbyte)(a.Current + b.Current),
        (sbyte)(a.Temperature + b.Temperature), (sbyte)(a.Amount + b.Amount), (sbyte)(a.Light + b.Light));

    /// <summary>The dimension of a quotient.</summary>
    public static Dimension operator /(Dimension a, Dimension b) => new(
        (sbyte)(a.Length - b.Length), (sbyte)(a.Mass - b.Mass), (sbyte)(a.Time - b.Time), (sbyte)(a.Current - b.Current),
        (sbyte)(a.Temperature - b.Temperature), (sbyte)(a.Amount - b.Amount), (sbyte)(a.Light - b.Light));
}
