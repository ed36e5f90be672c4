namespace Lidoff.Numbers.Reals;

/// <summary>One double: a formula at one set of inputs.</summary>
public readonly record struct Scalar(double Value) : IReal<Scalar>
{
    /// <summary>A constant, or an input, as a scalar.</summary>
    public static implicit operator Scalar(double constant) => new(constant);

    /// <summary>Sum.</summary>
    public static Scalar operator +(Scalar left, Scalar right) => new(left.Value + right.Value);

    /// <summary>Difference.</summary>
    public static Scalar operator -(Scalar left, Scalar right) => new(left.Value - right.Value);

    /// <summary>Product.</summary>
    public static Scalar operator *(Scalar left, Scalar right) => new(left.Value * right.Value);

    /// <summary>Quotient.</summary>
    public static Scalar operator /(Scalar left, Scalar right) => new(left.Value / right.Value);

    /// <summary>Negative.</summary>
    public static Scalar operator -(Scalar value) => new(-value.Value);

    /// <inheritdoc/>
    public static Scalar Sqrt(Scalar x) => new(Math.Sqrt(x.Value));

    /// <inheritdoc/>
    public static Scalar Exp(Scalar x) => new(Elementary.Exp(x.Value));

    /// <inheritdoc/>
    public static Scalar Log(Scalar x) => new(Elementary.Log(x.Value));

    /// <inheritdoc/>
    public static Scalar Sin(Scalar x) => new(Elementary.Sin(x.Value));

    /// <inheritdoc/>
    public static Scalar Cos(Scalar x) => new(Elementary.Cos(x.Value));

    /// <inheritdoc/>
    public static Scalar Pow(Scalar x, Scalar y) => new(Elementary.Pow(x.Value, y.Value));

    /// <summary>The smaller; NaN where either is NaN.</summary>
    public static Scalar Min(Scalar a, Scalar b) => double.IsNaN(a.Value) ? a : a.Value < b.Value ? a : b;

    /// <summary>The larger; NaN where either is NaN.</summary>
    public static Scalar Max(Scalar a, Scalar b) => double.IsNaN(a.Value) ? a : a.Value > b.Value ? a : b;

    /// <inheritdoc/>
    public static Scalar IfLess(Scalar a, Scalar b, Scalar then, Scalar otherwise) => a.Value < b.Value ? then : otherwise;
}
