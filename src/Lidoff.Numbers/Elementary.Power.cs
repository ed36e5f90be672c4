using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers;

/// <content>Powers: e to the y·ln x, with the logarithm and the product in two words.</content>
public static partial class Elementary
{
    internal static T PowOf<T>(T x, T y)
        where T : struct, IReal<T>, ICore<T>
    {
        var size = T.Max(x, -x);
        var (high, low) = WithPowers(LogTwoWords(size));
        high = LogEdges(size, high);
        low = T.IfLess(size, double.PositiveInfinity, T.IfLess(0.0, size, low, 0.0), 0.0);
        var product = high * y;
        var lost = T.Fma(high, y, -product) + (low * y);

        // Where the product is beyond any exponent (or endless) its lost digits mean nothing.
        lost = T.IfLess(T.Max(product, -product), 1e6, lost, 0.0);
        var result = ExpOf(product, lost);

        // Below zero only whole powers exist; odd ones change the sign.
        var sign = T.IfLess(IsWhole(y), 0.5, double.NaN, T.IfLess(IsWhole(y * 0.5), 0.5, -1.0, 1.0));
        result = T.IfLess(x, 0.0, result * sign, result);
        return T.IfLess(0.0, T.Max(y, -y), result, y + 1.0);
    }

    // One where y is a whole number, else zero; beyond 2⁵¹ the rounding trick no longer holds, and y is taken as whole and even.
    private static T IsWhole<T>(T y)
        where T : struct, IReal<T>, ICore<T>
    {
        var off = y - NearestWhole(y);
        var whole = T.IfLess(0.0, T.Max(off, -off), 0.0, 1.0);
        return T.IfLess(T.Max(y, -y), 2251799813685248.0, whole, 1.0);
    }
}
