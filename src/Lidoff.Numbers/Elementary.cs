using System.Runtime.CompilerServices;
using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers;

/// <summary>
/// Elementary functions of our own: fixed polynomials and exact fused multiply-add, no table, no branch that depends on
/// the machine. The same argument gives the same bits everywhere, alone or in a vector, which the base library does not
/// promise. Errors stand in <c>tests/reference</c>'s tables and are asserted. NaN in, NaN out.
/// The constants come from <c>tests/reference/elementary_constants.py</c>.
/// </summary>
public static partial class Elementary
{
    // Adding and taking away 1.5·2⁵² leaves the nearest whole number, which then stands in the low bits of the sum.
    private const double Whole = 6755399441055744;

    /// <summary>e to the x; zero below −745.2, infinite above 709.79.</summary>
    public static double Exp(double x) => ExpOf<Scalar>(x).Value;

    /// <summary>e to the x, less one, with all digits for small x.</summary>
    public static double Expm1(double x) => Expm1Of<Scalar>(x).Value;

    /// <summary>Natural logarithm; −∞ at zero, NaN below.</summary>
    public static double Log(double x) => LogOf<Scalar>(x).Value;

    /// <summary>Natural logarithm of 1 + x, with all digits for small x; −∞ at −1, NaN below.</summary>
    public static double Log1p(double x) => Log1pOf<Scalar>(x).Value;

    /// <summary>Decimal logarithm, exact at whole powers of ten.</summary>
    public static double Log10(double x) => Log10Of<Scalar>(x).Value;

    /// <summary>Binary logarithm, exact at whole powers of two.</summary>
    public static double Log2(double x) => Log2Of<Scalar>(x).Value;

    /// <summary>x to the y; NaN for x below zero unless y is whole; one for y = 0.</summary>
    public static double Pow(double x, double y) => PowOf<Scalar>(x, y).Value;

    /// <summary>Sine of radians; NaN beyond ± 2³⁰, where the angle has no digits left to mean anything.</summary>
    public static double Sin(double x) => SinOf<Scalar>(x).Value;

    /// <summary>Cosine of radians; NaN beyond ± 2³⁰.</summary>
    public static double Cos(double x) => CosOf<Scalar>(x).Value;

    /// <summary>Tangent of radians; NaN beyond ± 2³⁰.</summary>
    public static double Tan(double x) => TanOf<Scalar>(x).Value;

    /// <summary>c[0] + c[1]·x + … by Horner's scheme.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static T Polynomial<T>(T x, ReadOnlySpan<double> c)
        where T : struct, IReal<T>, ICore<T>
    {
        T sum = c[^1];
        for (var i = c.Length - 2; i >= 0; i--) sum = T.Fma(sum, x, c[i]);
        return sum;
    }
}
