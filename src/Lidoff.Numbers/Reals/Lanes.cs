using System.Numerics;

namespace Lidoff.Numbers.Reals;

/// <summary>
/// As many doubles as the hardware's vector holds, side by side: a formula at several samples at once. Every lane has
/// exactly the bits that <see cref="Scalar"/> gives, whatever the width and whatever its neighbours.
/// </summary>
public readonly record struct Lanes(Vector<double> Value) : IReal<Lanes>, ICore<Lanes>
{
    /// <summary>How many doubles stand side by side here; it depends on the hardware, results do not.</summary>
    internal static int Count => Vector<double>.Count;

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
    public static Lanes Exp(Lanes x) => Elementary.ExpOf(x);

    /// <inheritdoc/>
    public static Lanes Log(Lanes x) => Elementary.LogOf(x);

    /// <inheritdoc/>
    public static Lanes Sin(Lanes x) => Elementary.SinOf(x);

    /// <inheritdoc/>
    public static Lanes Cos(Lanes x) => Elementary.CosOf(x);

    /// <inheritdoc/>
    public static Lanes Pow(Lanes x, Lanes y) => Elementary.PowOf(x, y);

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

    /// <summary>The lanes that start at <paramref name="at"/>.</summary>
    internal static Lanes Load(ReadOnlySpan<double> from, int at) => new(new Vector<double>(from[at..]));

    /// <summary>Puts the lanes where <paramref name="at"/> starts.</summary>
    internal void Store(Span<double> into, int at) => Value.CopyTo(into[at..]);

    /// <summary>a · b + c with one rounding.</summary>
    internal static Lanes Fma(Lanes a, Lanes b, Lanes c) => new(Vector.FusedMultiplyAdd(a.Value, b.Value, c.Value));

    static Lanes ICore<Lanes>.Fma(Lanes a, Lanes b, Lanes c) => Fma(a, b, c);

    static Lanes ICore<Lanes>.FromBits(ulong bits) => OfBits(new Vector<ulong>(bits));

    static Lanes ICore<Lanes>.AddBits(Lanes x, Lanes y) => OfBits(BitsOf(x) + BitsOf(y));

    static Lanes ICore<Lanes>.And(Lanes x, Lanes y) => OfBits(BitsOf(x) & BitsOf(y));

    static Lanes ICore<Lanes>.Or(Lanes x, Lanes y) => OfBits(BitsOf(x) | BitsOf(y));

    static Lanes ICore<Lanes>.ShiftLeft(Lanes x, int by) => OfBits(Vector.ShiftLeft(BitsOf(x), by));

    static Lanes ICore<Lanes>.ShiftRight(Lanes x, int by) => OfBits(Vector.ShiftRightLogical(BitsOf(x), by));

    private static Vector<ulong> BitsOf(Lanes x) => Vector.AsVectorUInt64(x.Value);

    private static Lanes OfBits(Vector<ulong> bits) => new(Vector.AsVectorDouble(bits));
}
