using System.Runtime.CompilerServices;
using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers;

/// <content>Exponentials: x = k·ln 2 + r with |r| ≤ ½ ln 2, then 2ᵏ·(1 + r + r²q(r)).</content>
public static partial class Elementary
{
    private const double PerLn2 = 1.4426950408889634;

    // ln 2 in two parts; the first has 32 bits, so that its product with a whole number up to 2²¹ is exact.
    private const double Ln2Upper = 0.6931471806019545;
    private const double Ln2Lower = -4.2009150726810846e-11;

    private static ReadOnlySpan<double> ExpQ =>
    [
        0.5, 0.1666666666666667, 0.04166666666666667, 0.008333333333326141, 0.0013888888888883752, 0.00019841269874800512,
        2.4801587325533377e-05, 2.7557255425720897e-06, 2.75572736613304e-07, 2.510520638458724e-08, 2.091467938417506e-09,
    ];

    internal static T ExpOf<T>(T x)
        where T : struct, IReal<T>, ICore<T> => ExpOf<T>(x, 0.0);

    internal static T Expm1Of<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        // Beyond −40 nothing is left but −1; 2ᵏ⁻¹ keeps clear of overflow at the upper end.
        var inside = T.Max(x, -40);
        var (k, r) = Reduced<T>(inside, 0.0);
        var half = PowerOfTwo(k - 1.0);
        var rest = T.Fma(r * r, Polynomial(r, ExpQ), r);
        var result = T.Fma(half, rest, half - 0.5) * 2.0;
        return T.IfLess(x, 709.79, result, x + double.PositiveInfinity);
    }

    // e to the (x + small): the second word carries digits that x has no room for.
    private static T ExpOf<T>(T x, T small)
        where T : struct, IReal<T>, ICore<T>
    {
        var (k, r) = Reduced(x, small);
        var mantissa = 1.0 + T.Fma(r * r, Polynomial(r, ExpQ), r);

        // Two factors, because 2ᵏ alone can be too small or too large where the result is not.
        var first = NearestWhole(k * 0.5);
        var result = mantissa * PowerOfTwo(first) * PowerOfTwo(k - first);
        result = T.IfLess(x, -745.2, 0.0, result);
        return T.IfLess(709.79, x, double.PositiveInfinity, result);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (T K, T R) Reduced<T>(T x, T small)
        where T : struct, IReal<T>, ICore<T>
    {
        var k = NearestWhole(x * PerLn2);
        var r = T.Fma(-k, Ln2Upper, x);
        return (k, T.Fma(-k, Ln2Lower, r) + small);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T NearestWhole<T>(T x)
        where T : struct, IReal<T>, ICore<T> => x + Whole - Whole;

    // 2 to a whole number from −1022 to 1023.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T PowerOfTwo<T>(T k)
        where T : struct, IReal<T>, ICore<T> => T.ShiftLeft(k + (Whole + 1023), 52);
}
