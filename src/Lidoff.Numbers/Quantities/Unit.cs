namespace Lidoff.Numbers.Quantities;

/// <summary>
/// A unit as people write it: its symbol, its dimension, and how a value in it becomes SI (value × factor + offset; the
/// offset is zero but for degrees Celsius and Fahrenheit). Ready-made ones are in <see cref="Units"/>.
/// </summary>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>A value in this unit, in SI.</summary>
    public double ToSi(double value) => value * Factor + Offset;

    /// <summary>An SI value, in this unit.</summary>
    public double FromSi(double si) => (si - Offset) / Factor;

    /// <summary>An SI difference or standard uncertainty, in this unit (no offset).</summary>
    public double SpanFromSi(double si) => si / Factor;

    /// <summary>A difference or standard uncertainty in this unit, in SI (no offset).</summary>
    public double SpanToSi(double value) => value * Factor;
}
