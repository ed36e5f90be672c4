namespace Lidoff.Numbers.Reals;

/// <summary>One double: a formula at one set of inputs.</summary>
public readonly record struct Scalar(double Value) : IReal<Scalar>, ICore<Scalar>
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
    public static Scalar Exp(Scalar x) => Elementary.ExpOf(x);

    /// <inheritdoc/>
    public static Scalar Log(Scalar x) => Elementary.LogOf(x);

    /// <inheritdoc/>
    public static Scalar Sin(Scalar x) => Elementary.SinOf(x);

    /// <inheritdoc/>
    public static Scalar Cos(Scalar x) => Elementary.CosOf(x);

    /// <inheritdoc/>
    public static Scalar Pow(Scalar x, Scalar y) => Elementary.PowOf(x, y);

    /// <summary>The smaller; NaN where either is NaN.</summary>
    public static Scalar Min(Scalar a, Scalar b) => double.IsNaN(a.Value) ? a : a.Value < b.Value ? a : b;

    /// <summary>The larger; NaN where either is NaN.</summary>
    public static Scalar Max(Scalar a, Scalar b) => double.IsNaN(a.Value) ? a : a.Value > b.Value ? a : b;

    /// <inheritdoc/>
    public static Scalar IfLess(Scalar a, Scalar b, Scalar then, Scalar otherwise) => a.Value < b.Value ? then : otherwise;

    static Scalar ICore<Scalar>.Fma(Scalar a, Scalar b, Scalar c) => new(Math.FusedMultiplyAdd(a.Value, b.Value, c.Value));

    static Scalar ICore<Scalar>.FromBits(ulong bits) => new(BitConverter.UInt64BitsToDouble(bits));

    static Scalar ICore<Scalar>.AddBits(Scalar x, Scalar y) => OfBits(BitsOf(x) + BitsOf(y));

    static Scalar ICore<Scalar>.And(Scalar x, Scalar y) => OfBits(BitsOf(x) & BitsOf(y));

    static Scalar ICore<Scalar>.Or(Scalar x, Scalar y) => OfBits(BitsOf(x) | BitsOf(y));

    static Scalar ICore<Scalar>.ShiftLeft(Scalar x, int by) => OfBits(BitsOf(x) << by);

    static Scalar ICore<Scalar>.ShiftRight(Scalar x, int by) => OfBits(BitsOf(x) >> by);

    private static ulong BitsOf(Scalar x) => BitConverter.DoubleToUInt64Bits(x.Value);

    private static Scalar OfBits(ulong bits) => new(BitConverter.UInt64BitsToDouble(bits));
}
