using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Weighing.Modelling;

/// <summary>How a value of the model reads in a sentence; board, drawer, claims and report all write it so.</summary>
public static class ValueText
{
    /// <summary>Value ± standard uncertainty with its unit, or the name with its odds and whose word it is, or "(unknown)".</summary>
    public static string Print(ModelValue value)
    {
        Guard.NotNull(value);
        if (value.Missing is not null) return "(unknown)";
        if (value.Number is { } number) return SpokenQuantity.Of(number.Value, number.U, value.Unit);
        return value.Probability is { } p ? $"{value.Name} ({(value.By.Length > 0 ? value.By + ", " : "")}{Percent(p)})" : value.Name ?? "";
    }

    /// <summary>A probability for people: never 0 % nor 100 %, which nobody knows.</summary>
    public static string Percent(double p) => p > 0.99 ? "over 99 %" : p < 0.01 ? "under 1 %" : (p * 100).ToString("0", CultureInfo.InvariantCulture) + " %";

    /// <summary>The 90 % interval of a number in words; empty for what is no number, and for one that was given without a doubt.</summary>
    public static string Interval(ModelValue value) => Guard.NotNull(value).Number is null || value.Low == value.High ? "" : SpokenQuantity.Interval(value.Low, value.High, value.Unit);
}
