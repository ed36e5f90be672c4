namespace Lidoff.Numbers.Quantities;

/// <summary>
/// A unit as people write it: its symbol, its dimension, and how a value in it becomes SI (value × factor + offset; the
/// offset is zero but for degrees Celsius and Fahrenheit). Ready-made ones are in <see cref="Units"/>.
/// </summary>
public sealed record Unit(string Symbol, Dimension Dimension, double Factor, double Offset = 0)
{
    /// <summary>A value in this unit, in SI.</summary>
    public double ToSi(double value) => SpanToSi(value) + Offset;

    /// <summary>An SI value, in this unit.</summary>
    public double FromSi(double si) => SpanFromSi(si - Offset);

    /// <summary>An SI difference or standard uncertainty, in this unit (no offset).</summary>
    public double SpanFromSi(double si) => Divisor is { } divisor ? si * divisor : si / Factor;

    /// <summary>A difference or standard uncertainty in this unit, in SI (no offset).</summary>
    public double SpanToSi(double value) => Divisor is { } divisor ? value / divisor : value * Factor;

    // 1e-3 is not a double but 1000 is: dividing by it rounds once, so that 12 mA is the double nearest to 0.012 A.
    private double? Divisor
    {
        get
        {
            if (!(Factor < 1)) return null;
            var divisor = Math.Round(1 / Factor);
            return divisor < 9e15 && 1 / divisor == Factor ? divisor : null;
        }
    }
}
