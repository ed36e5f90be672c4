namespace Lidoff.Numbers.Reals;

/// <summary>
/// What the elementary functions need of a machine number beyond <see cref="IReal{T}"/>: exact fused multiply-add and its
/// 64 bits as an integer. One text of a function then serves one double and a vector of them, bit for bit.
/// </summary>
internal interface ICore<T>
    where T : struct, IReal<T>, ICore<T>
{
    /// <summary>a · b + c with one rounding.</summary>
    static abstract T Fma(T a, T b, T c);

    /// <summary>The number with these bits.</summary>
    static abstract T FromBits(ulong bits);

    /// <summary>Sum of the bits as integers.</summary>
    static abstract T AddBits(T x, T y);

    /// <summary>Bits set in both.</summary>
    static abstract T And(T x, T y);

    /// <summary>Bits set in either.</summary>
    static abstract T Or(T x, T y);

    /// <summary>Bits moved up.</summary>
    static abstract T ShiftLeft(T x, int by);

    /// <summary>Bits moved down, zeros coming in.</summary>
    static abstract T ShiftRight(T x, int by);
}
