using System.Runtime.CompilerServices;
using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers;

/// <content>
/// Logarithms: x = 2ᵏ·(1 + f) with 1 + f from √½ to √2, s = f/(2 + f), ln(1 + f) = 2 artanh s.
/// </content>
public static partial class Elementary
{
    private const ulong OneBits = 0x3FF0000000000000;
    private const ulong RootHalfBits = 0x3FE6A09E667F3BCD;
    private const ulong MantissaBits = 0x000FFFFFFFFFFFFF;

    private const double Ln2 = 0.6931471805599453;
    private const double Ln2Rest = 2.3190468138462996e-17;
    private const double PerLn2Rest = 2.0355273740931033e-17;
    private const double PerLn10 = 0.4342944819032518;
    private const double PerLn10Rest = 1.098319650216765e-17;
    private const double TwoThirds = 0.6666666666666666;
    private const double TwoThirdsRest = 3.700743415417188e-17;

    private static ReadOnlySpan<double> LogP =>
    [
        0.6666666666666666, 0.4000000000000088, 0.28571428570803614, 0.22222222391714003,
        0.1818179564012366, 0.15386239703317603, 0.1326877312518755, 0.130866262887013,
    ];

    private static ReadOnlySpan<double> LogTwoWordP =>
    [
        0.4, 0.2857142857142857, 0.22222222222222157, 0.1818181818184646,
        0.15384615378384112, 0.13333334121153814, 0.1176464534223584, 0.10529187349905637,
        0.09441934150643623, 0.09971201428608725,
    ];

    internal static T LogOf<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        var (k, f) = Parted(x);
        var s = f / (2.0 + f);
        var z = s * s;
        var half = 0.5 * f * f;
        var rest = z * Polynomial(z, LogP);

        // f stands alone until last, so that the quotient's rounding does not count in full.
        var lower = T.Fma(s, half + rest, k * Ln2Lower);
        return LogEdges(x, T.Fma(k, Ln2Upper, f - (half - lower)));
    }

    internal static T Log1pOf<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        var u = 1.0 + x;

        // What the sum lost, whichever of the two is the larger.
        var back = u - x;
        var lost = (1.0 - back) + (x - (u - back));
        var result = LogOf(u) + (lost / u);
        result = T.IfLess(x, 1e300, result, LogOf(u));
        return T.IfLess(-1.0, x, result, LogOf(u));
    }

    internal static T Log2Of<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        var (k, high, low) = LogTwoWords(x);
        var product = high * PerLn2;
        var lower = T.Fma(high, PerLn2, -product) + T.Fma(high, PerLn2Rest, low * PerLn2);
        return LogEdges(x, k + (product + lower));
    }

    internal static T Log10Of<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        var (high, low) = WithPowers(LogTwoWords(x));
        var product = high * PerLn10;
        var lower = T.Fma(high, PerLn10, -product) + T.Fma(high, PerLn10Rest, low * PerLn10);
        return LogEdges(x, product + lower);
    }

    // ln x = k·ln 2 + (high + low), good to about 2⁻⁶⁵ of ln(1 + f).
    private static (T K, T High, T Low) LogTwoWords<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        var (k, f) = Parted(x);
        var bottom = 2.0 + f;
        var bottomLost = f - (bottom - 2.0);
        var s = f / bottom;
        var sLow = (T.Fma(-s, bottom, f) - (s * bottomLost)) / bottom;

        var z = s * s;
        var zLow = T.Fma(s, s, -z) + (2.0 * s * sLow);

        // c = 2/3 + z·p(z) in two words, then 2s + s·z·c.
        var tail = z * Polynomial(z, LogTwoWordP);
        var c = TwoThirds + tail;
        var cLow = (TwoThirds - c) + tail + TwoThirdsRest;
        var zc = z * c;
        var zcLow = T.Fma(z, c, -zc) + T.Fma(z, cLow, zLow * c);
        var cubic = s * zc;
        var cubicLow = T.Fma(s, zc, -cubic) + T.Fma(s, zcLow, sLow * zc);
        var twice = 2.0 * s;
        var high = twice + cubic;
        var low = (twice - high) + cubic + (cubicLow + (2.0 * sLow));
        return (k, high, low);
    }

    private static (T High, T Low) WithPowers<T>((T K, T High, T Low) log)
        where T : struct, IReal<T>, ICore<T>
    {
        // Unless k is zero its part is the larger one.
        var first = log.K * Ln2Upper;
        var sum = first + log.High;
        var lost = T.IfLess(0.0, log.K * log.K, (first - sum) + log.High, 0.0);
        var low = lost + T.Fma(log.K, Ln2Lower, log.Low);
        var high = sum + low;
        return (high, (sum - high) + low);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (T K, T F) Parted<T>(T x)
        where T : struct, IReal<T>, ICore<T>
    {
        // Subnormal numbers are lifted by 2⁵⁴ first.
        T normal = 2.2250738585072014e-308;
        var lifted = T.IfLess(x, normal, x * 18014398509481984.0, x);
        var lift = T.IfLess(x, normal, 54.0, 0.0);
        var moved = T.AddBits(lifted, T.FromBits(OneBits - RootHalfBits));

        // 2⁵² with the exponent in its lowest bits, as a number.
        var exponent = T.Or(T.ShiftRight(moved, 52), 4503599627370496.0);
        var mantissa = T.AddBits(T.And(moved, T.FromBits(MantissaBits)), T.FromBits(RootHalfBits));
        return (exponent - (4503599627370496.0 + 1023) - lift, mantissa - 1.0);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T LogEdges<T>(T x, T result)
        where T : struct, IReal<T>, ICore<T>
    {
        var edge = T.IfLess(x, 0.0, double.NaN, T.IfLess(x, 1.0, double.NegativeInfinity, x));
        result = T.IfLess(x, double.PositiveInfinity, result, x);
        return T.IfLess(0.0, x, result, edge);
    }
}
