namespace Lidoff.Numbers.Spreads;

/// <summary>A coverage interval, both ends included, in the unit of the value it belongs to (SI inside the program).</summary>
public readonly record struct Interval(double Low, double High)
{
    /// <summary>Width, never below zero.</summary>
    public double Width => High - Low;

    /// <summary>True where <paramref name="value"/> lies inside or on an end.</summary>
    public bool Holds(double value) => value >= Low && value <= High;
}
