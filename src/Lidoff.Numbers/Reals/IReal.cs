using System.Numerics;

namespace Lidoff.Numbers.Reals;

/// <summary>
/// The vocabulary in which every formula is written once. It runs as one double (<c>Scalar</c>), as eight logical lanes for
/// Monte Carlo (<c>Lanes</c>) and with all partial derivatives (<c>Gradient</c>). A formula cannot branch on a number nor
/// call <see cref="Math"/>: both are compile errors. Traps: both arms of <see cref="IfLess"/> run (guard the argument, not
/// the result); an iteration uses a fixed count; a kink makes the derivative one-sided. Values are SI, finite.
/// </summary>
public interface IReal<T> : IAdditionOperators<T, T, T>, ISubtractionOperators<T, T, T>, IMultiplyOperators<T, T, T>,
    IDivisionOperators<T, T, T>, IUnaryNegationOperators<T, T>
    where T : struct, IReal<T>
{
    /// <summary>A constant of the formula.</summary>
    static abstract implicit operator T(double constant);

    /// <summary>Square root, argument of zero or more.</summary>
    static abstract T Sqrt(T x);

    /// <summary>Natural exponential.</summary>
    static abstract T Exp(T x);

    /// <summary>Natural logarithm, argument above zero.</summary>
    static abstract T Log(T x);

    /// <summary>Sine of radians.</summary>
    static abstract T Sin(T x);

    /// <summary>Cosine of radians.</summary>
    static abstract T Cos(T x);

    /// <summary>The smaller.</summary>
    static abstract T Min(T a, T b);

    /// <summary>The larger.</summary>
    static abstract T Max(T a, T b);

    /// <summary><paramref name="then"/> where a &lt; b, else <paramref name="otherwise"/>; both are evaluated.</summary>
    static abstract T IfLess(T a, T b, T then, T otherwise);

    /// <summary>x to the power y, x above zero.</summary>
    static virtual T Pow(T x, T y) => T.Exp(y * T.Log(x));
}
