using System.Runtime.CompilerServices;
using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers;

/// <content>Sine, cosine, tangent: the angle less a whole number of quarter turns, in two words, then polynomials.</content>
public static partial class Elementary
{
    private const double LargestAngle = 1L << 30;
    private const double QuarterTurnsPerRadian = 0.6366197723675814;

    // π/2 in three words.
    private const double QuarterTurn = 1.5707963267948966;
    private const double QuarterTurnRest = 6.123233995736766e-17;
    private const double QuarterTurnLast = -1.4973849048591698e-33;

    private static ReadOnlySpan<double> SinS =>
    [
        -0.16666666666666666, 0.008333333333333331, -0.00019841269841265065, 2.7557319219339163e-06,
        -2.5052106232446933e-08, 1.6058531618883964e-10, -7.586697111683407e-13,
    ];

    private static ReadOnlySpan<double> CosC =>
    [
        0.041666666666666664, -0.0013888888888888887, 2.4801587301584645e-05, -2.7557319221402824e-07,
        2.0876755791080066e-09, -1.1470460887553148e-11, 4.745871898694329e-14,
    ];

    internal static T SinOf<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        var (turns, sin, cos) = SinCos(x);
        return Turned(turns, sin, cos);
    }

    internal static T CosOf<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        var (turns, sin, cos) = SinCos(x);
        return Turned(turns + 1.0, sin, cos);
    }

    internal static T TanOf<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        var (turns, sin, cos) = SinCos(x);
        return Turned(turns, sin, cos) / Turned(turns + 1.0, sin, cos);
    }

    // Quarter turns, and sine and cosine of what is left.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (T Turns, T Sin, T Cos) SinCos<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        x = T.IfLess(T.Max(x, -x), LargestAngle, x, double.NaN);
        var k = NearestWhole(x * QuarterTurnsPerRadian);

        // Exact: both terms are multiples of 2⁻⁵³ and the difference is below one.
        var first = T.Fma(-k, QuarterTurn, x);
        var second = k * QuarterTurnRest;
        var secondLost = T.Fma(k, QuarterTurnRest, -second);
        var r = first - second;
        var back = r - first;
        var lost = (first - (r - back)) - (second + back);
        var low = lost - secondLost - (k * QuarterTurnLast);

        var z = r * r;
        var sin = r + T.Fma(z * r, Polynomial(z, SinS), low * T.Fma(-0.5, z, 1.0));
        var half = 0.5 * z;
        var head = 1.0 - half;
        var cos = head + (((1.0 - head) - half) + T.Fma(z * z, Polynomial(z, CosC), -(r * low)));
        return (k, sin, cos);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Turned<T>(T turns, T sin, T cos)
        where T : struct, IReal<T>, ICore<T>
    {
        var bits = turns + Whole;
        var odd = T.Or(T.And(bits, T.FromBits(1)), 4503599627370496.0) - 4503599627370496.0;
        var value = T.IfLess(0.5, odd, cos, sin);
        var negative = T.Or(T.ShiftRight(T.And(bits, T.FromBits(2)), 1), 4503599627370496.0) - 4503599627370496.0;
        return T.IfLess(0.5, negative, -value, value);
    }
}
