using System.Globalization;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Bench.Showing;

/// <summary>Numbers as they were typed: no culture, no more digits than they have, a true minus.</summary>
internal static class Plain
{
    /// <summary>The number with six decimals at most; empty for none.</summary>
    public static string Number(double? value) => value?.ToString("0.######", CultureInfo.InvariantCulture).Replace('-', '−') ?? "";

    /// <summary>The number as a field takes it back, with a plain minus.</summary>
    public static string Typed(double? value) => value?.ToString("R", CultureInfo.InvariantCulture) ?? "";

    /// <summary>"3.610 ± 0.010 g"; without the doubt where there is none; empty where there is no value.</summary>
    public static string With(double? value, double? u, string unit) =>
        value is { } known ? QuantityText.Noted(known, u, unit).Replace('-', '−') : "";
}
