using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;

namespace Lidoff.Numbers.Failing;

/// <summary>
/// The one place where a programmer's mistake throws. Anything that comes from outside the program (a file, a typed
/// value, a picture) never passes through here: it returns an <see cref="Outcome{T}"/> instead.
/// </summary>
public static class Guard
{
    /// <summary>Throws when <paramref name="condition"/> does not hold.</summary>
    public static void That([DoesNotReturnIf(false)] bool condition, string expectation)
    {
        if (!condition) throw new ArgumentException("Lidoff called itself wrongly: expected " + expectation);
    }

    /// <summary>Throws when <paramref name="value"/> is null, otherwise hands it back.</summary>
    public static T NotNull<T>([NotNull] T? value, [CallerArgumentExpression(nameof(value))] string name = "")
        where T : class => value ?? throw new ArgumentNullException(name);

    /// <summary>Throws when <paramref name="value"/> is NaN or infinite, otherwise hands it back.</summary>
    public static double Finite(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) ? value : throw new ArgumentOutOfRangeException(name, value, "expected a finite number");

    /// <summary>Throws when <paramref name="value"/> is NaN, infinite or below zero, otherwise hands it back.</summary>
    public static double NotNegative(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) && value >= 0 ? value : throw new ArgumentOutOfRangeException(name, value, "expected a finite number of zero or more");

    /// <summary>Throws when <paramref name="value"/> is not above zero, otherwise hands it back.</summary>
    public static double Positive(double value, [CallerArgumentExpression(nameof(value))] string name = "") =>
        double.IsFinite(value) && value > 0 ? value : throw new ArgumentOutOfRangeException(name, value, "expected a finite number above zero");
}
