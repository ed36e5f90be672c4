using System.Runtime.Intrinsics;

namespace Lidoff.Numbers.Reals;

/// <summary>
/// A value with its partial derivatives by up to eight inputs (forward differentiation). A formula of more inputs is run
/// again for the next eight. At a kink (<see cref="Min"/>, <see cref="Max"/>, <see cref="IfLess"/>) the derivative is that
/// of the arm taken.
/// </summary>
public readonly record struct Gradient(double Value, Vector512<double> Partials) : IReal<Gradient>
{
    /// <summary>How many partial derivatives one gradient carries.</summary>
    public const int Width = 8;

    /// <summary>The input at <paramref name="index"/> (0 to 7): its derivative by itself is one.</summary>
    public static Gradient Input(double value, int index) => new(value, Vector512<double>.Zero.WithElement(index, 1));

    /// <summary>A constant: no derivative.</summary>
    public static implicit operator Gradient(double constant) => new(constant, Vector512<double>.Zero);

    /// <summary>Sum.</summary>
    public static Gradient operator +(Gradient left, Gradient right) => new(left.Value + right.Value, left.Partials + right.Partials);

    /// <summary>Difference.</summary>
    public static Gradient operator -(Gradient left, Gradient right) => new(left.Value - right.Value, left.Partials - right.Partials);

    /// <summary>Product.</summary>
    public static Gradient operator *(Gradient left, Gradient right) =>
        new(left.Value * right.Value, (left.Partials * right.Value) + (right.Partials * left.Value));

    /// <summary>Quotient.</summary>
    public static Gradient operator /(Gradient left, Gradient right)
    {
        var quotient = left.Value / right.Value;
        return new(quotient, (left.Partials - (right.Partials * quotient)) / right.Value);
    }

    /// <summary>Negative.</summary>
    public static Gradient operator -(Gradient value) => new(-value.Value, -value.Partials);

    /// <summary>Square root. At zero the derivative of a constant argument stays zero instead of NaN.</summary>
    public static Gradient Sqrt(Gradient x)
    {
        var root = Math.Sqrt(x.Value);
        return x.Through(root, 0.5 / root);
    }

    /// <inheritdoc/>
    public static Gradient Exp(Gradient x)
    {
        var e = Elementary.Exp(x.Value);
        return x.Through(e, e);
    }

    /// <inheritdoc/>
    public static Gradient Log(Gradient x) => x.Through(Elementary.Log(x.Value), 1 / x.Value);

    /// <inheritdoc/>
    public static Gradient Sin(Gradient x) => x.Through(Elementary.Sin(x.Value), Elementary.Cos(x.Value));

    /// <inheritdoc/>
    public static Gradient Cos(Gradient x) => x.Through(Elementary.Cos(x.Value), -Elementary.Sin(x.Value));

    /// <inheritdoc/>
    public static Gradient Pow(Gradient x, Gradient y)
    {
        var power = Elementary.Pow(x.Value, y.Value);
        var byBase = x.Through(power, y.Value * Elementary.Pow(x.Value, y.Value - 1));
        if (y.Partials == Vector512<double>.Zero) return byBase;
        return new(power, byBase.Partials + (y.Partials * (power * Elementary.Log(x.Value))));
    }

    /// <summary>The smaller, with its derivatives.</summary>
    public static Gradient Min(Gradient a, Gradient b) => double.IsNaN(a.Value) || a.Value < b.Value ? a : b;

    /// <summary>The larger, with its derivatives.</summary>
    public static Gradient Max(Gradient a, Gradient b) => double.IsNaN(a.Value) || a.Value > b.Value ? a : b;

    /// <inheritdoc/>
    public static Gradient IfLess(Gradient a, Gradient b, Gradient then, Gradient otherwise) => a.Value < b.Value ? then : otherwise;

    // A zero partial stays zero even where the slope is infinite: that input does not enter at all.
    private Gradient Through(double value, double slope) =>
        new(value, Vector512.ConditionalSelect(Vector512.Equals(Partials, Vector512<double>.Zero), Partials, Partials * slope));
}
