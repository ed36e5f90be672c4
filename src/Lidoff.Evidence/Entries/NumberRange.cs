using System.Globalization;

namespace Lidoff.Evidence.Entries;

/// <summary>
/// Which numbers a key allows. The bounds belong to the range unless <paramref name="Open"/> says that the lower one does not.
/// </summary>
/// <param name="Least">Lower bound; negative infinity where there is none.</param>
/// <param name="Most">Upper bound; infinity where there is none.</param>
/// <param name="Open">True when the lower bound itself is not allowed.</param>
public readonly record struct NumberRange(double Least, double Most = double.PositiveInfinity, bool Open = false)
{
    /// <summary>Every finite number.</summary>
    public static NumberRange Any { get; } = new(double.NegativeInfinity);

    /// <summary>Above zero.</summary>
    public static NumberRange Positive { get; } = new(0, Open: true);

    /// <summary>Zero or more.</summary>
    public static NumberRange NotNegative { get; } = new(0);

    /// <summary>A share or a probability: 0 to 1.</summary>
    public static NumberRange Share { get; } = new(0, 1);

    /// <summary>True when <paramref name="value"/> is finite and allowed.</summary>
    public bool Holds(double value) => double.IsFinite(value) && (Open ? value > Least : value >= Least) && value <= Most;

    /// <summary>The range in words, as it ends "a number …"; empty for every number.</summary>
    public override string ToString()
    {
        var low = Least.ToString("R", CultureInfo.InvariantCulture);
        var high = Most.ToString("R", CultureInfo.InvariantCulture);
        return (double.IsNegativeInfinity(Least), double.IsPositiveInfinity(Most)) switch
        {
            (true, true) => "",
            (true, false) => $"of {high} at most",
            (false, true) => Open ? $"above {low}" : $"of {low} or more",
            _ => Open ? $"above {low} and up to {high}" : $"from {low} to {high}",
        };
    }
}
