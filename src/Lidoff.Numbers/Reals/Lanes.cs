using System.Numerics;

namespace Lidoff.Numbers.Reals;

/// <summary>
/// As many doubles as the hardware's vector holds, side by side: a formula at several samples at once. Every lane has
/// exactly the bits that <see cref="Scalar"/> gives, whatever the width and whatever its neighbours.
/// </summary>
public readonly record struct Lanes(Vector<double> Value) : IReal<Lanes>
{
    /// <summary>A constant in every lane.</summary>
    public static implicit operator Lanes(double constant) => new(new Vector<double>(constant));

    /// <summary>Sum.</summary>
    public static Lanes operator +(Lanes left, Lanes right) => new(left.Value + right.Value);

    /// <summary>Difference.</summary>
    public static Lanes operator -(Lanes left, Lanes right) => new(left.Value - right.Value);

    /// <summary>Product.</summary>
    public static Lanes operator *(Lanes left, Lanes right) => new(left.Value * right.Value);

    /// <summary>Quotient.</summary>
    public static Lanes operator /(Lanes left, Lanes right) => new(left.Value / right.Value);

    /// <summary>Negative.</summary>
    public static Lanes operator -(Lanes value) => new(-value.Value);

    /// <inheritdoc/>
    public static Lanes Sqrt(Lanes x) => new(Vector.SquareRoot(x.Value));

    /// <inheritdoc/>
    public static Lanes Exp(Lanes x) => Each(x, Elementary.Exp);

    /// <inheritdoc/>
    public static Lanes Log(Lanes x) => Each(x, Elementary.Log);

    /// <inheritdoc/>
    public static Lanes Sin(Lanes x) => Each(x, Elementary.Sin);

    /// <inheritdoc/>
    public static Lanes Cos(Lanes x) => Each(x, Elementary.Cos);

    /// <inheritdoc/>
    public static Lanes Pow(Lanes x, Lanes y)
    {
        Span<double> lanes = stackalloc double[Vector<double>.Count];
        for (var i = 0; i < lanes.Length; i++) lanes[i] = Elementary.Pow(x.Value[i], y.Value[i]);
        return new(new Vector<double>(lanes));
    }

    /// <summary>The smaller; NaN where either is NaN.</summary>
    public static Lanes Min(Lanes a, Lanes b) =>
        new(Vector.ConditionalSelect(Vector.LessThan(a.Value, b.Value) | NotANumber(a), a.Value, b.Value));

    /// <summary>The larger; NaN where either is NaN.</summary>
    public static Lanes Max(Lanes a, Lanes b) =>
        new(Vector.ConditionalSelect(Vector.GreaterThan(a.Value, b.Value) | NotANumber(a), a.Value, b.Value));

    /// <inheritdoc/>
    public static Lanes IfLess(Lanes a, Lanes b, Lanes then, Lanes otherwise) =>
        new(Vector.ConditionalSelect(Vector.LessThan(a.Value, b.Value), then.Value, otherwise.Value));

    private static Vector<long> NotANumber(Lanes x) => ~Vector.Equals(x.Value, x.Value);

    private static Lanes Each(Lanes x, Func<double, double> function)
    {
        Span<double> lanes = stackalloc double[Vector<double>.Count];
        for (var i = 0; i < lanes.Length; i++) lanes[i] = function(x.Value[i]);
        return new(new Vector<double>(lanes));
    }
}
