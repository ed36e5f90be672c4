using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Quantities;

/// <summary>
/// Writes numbers with their doubt for people: the uncertainty to two significant digits and the value to the same place
/// (JCGM 100:2008, 7.2.6), an engineering prefix where the unit takes one, the same characters on every machine. What it
/// writes reads back as typed; <see cref="SpokenQuantity"/> writes for reading alone.
/// </summary>
public static class QuantityText
{
    /// <summary>
    /// <c>3.70 ± 0.10 V</c>. Value and standard uncertainty in SI; the unit is what people give it in, its prefix is chosen
    /// anew unless <paramref name="keepUnit"/> is set. An uncertainty of zero writes the value with up to 15 digits.
    /// </summary>
    public static string WithUncertainty(double si, double u, Unit unit, bool keepUnit = false)
    {
        Guard.Finite(si);
        Guard.NotNegative(u);
        var shown = keepUnit ? unit : EngineeringUnit.For(Math.Max(Math.Abs(si), u), unit);
        if (u == 0) return Value(si, shown, 15, keepUnit: true);
        var (value, spread) = Rounded(si, u, shown);
        if (keepUnit || !(LeavesPrefix(value) || LeavesPrefix(spread))) return $"{value} ± {spread}{Tail(shown)}";
        // 999.9996 rounds to 1000.00: the next prefix is due. Both go on as they were rounded, so that 995 at a
        // place of ten becomes 1.00 k whichever way its double leans in the next unit.
        var rounded = shown.SpanToSi(double.Parse(spread, CultureInfo.InvariantCulture));
        var carried = LeavesPrefix(value) ? shown.SpanToSi(double.Parse(value, CultureInfo.InvariantCulture)) : si;
        shown = EngineeringUnit.For(Math.Max(Math.Abs(si), u) * 1.01, unit);
        (value, spread) = Rounded(carried, rounded, shown);
        return $"{value} ± {spread}{Tail(shown)}";
    }

    /// <summary>
    /// <c>11.00 ± 0.10 g</c>: a value in the unit it was noted in, its standard uncertainty to two significant digits and the value to the
    /// same place; without an uncertainty (null, or zero) as it was noted, to six decimals.
    /// </summary>
    public static string Noted(double value, double? u, string unit)
    {
        Guard.Finite(value);
        var tail = unit.Length > 0 ? " " + unit : "";
        if (u is not > 0) return value.ToString("0.######", CultureInfo.InvariantCulture) + tail;
        var decimals = -Exponent(Guard.Finite(u.Value), 2) + 1;
        return $"{At(value, decimals)} ± {At(u.Value, decimals)}{tail}";
    }

    /// <summary><c>6.010 × 6.000 mm, each ± 0.020</c>: several values that share one doubt, as <see cref="Noted"/> writes one.</summary>
    public static string Each(IEnumerable<double> values, double u, string unit)
    {
        var decimals = u > 0 ? -Exponent(Guard.Finite(u), 2) + 1 : 0;
        var joined = string.Join(" × ", Guard.NotNull(values).Select(value => u > 0 ? At(value, decimals) : Noted(value, null, "")));
        return u > 0 ? $"{joined} {unit}, each ± {At(u, decimals)}" : $"{joined} {unit}";
    }

    /// <summary>A value alone, to <paramref name="digits"/> significant digits (1 to 17), trailing zeros dropped.</summary>
    public static string Value(double si, Unit unit, int digits = 4, bool keepUnit = false)
    {
        Guard.Finite(si);
        Guard.That(digits is >= 1 and <= 17, "1 to 17 digits");
        var shown = keepUnit ? unit : EngineeringUnit.For(Math.Abs(si), unit);
        return Shortened(shown.FromSi(si), digits) + Tail(shown);
    }

    /// <summary>
    /// An interval from low to high, both in SI: <c>3.53 to 3.87 V</c>. Both ends are written to the place of the
    /// second digit of the width, so that rounding does not move an end visibly.
    /// </summary>
    public static string Interval(double low, double high, Unit unit, bool keepUnit = false)
    {
        Guard.Finite(low);
        Guard.Finite(high);
        Guard.That(low <= high, "low not above high");
        var shown = keepUnit ? unit : EngineeringUnit.For(Math.Max(Math.Abs(low), Math.Abs(high)), unit);
        if (low == high) return Value(low, shown, 15, keepUnit: true);
        var decimals = -Exponent(shown.SpanFromSi(high - low), 2) + 1;
        return $"{At(shown.FromSi(low), decimals)} to {At(shown.FromSi(high), decimals)}{Tail(shown)}";
    }

    /// <summary>Rows of one table: one unit for all, the decimal marks one above the other, padded with blanks on both sides.</summary>
    public static IReadOnlyList<string> Column(IReadOnlyList<(double Si, double U)> rows, Unit unit)
    {
        if (rows.Count == 0) return [];
        var shown = EngineeringUnit.For(rows.Max(row => Math.Max(Math.Abs(row.Si), row.U)), unit);
        var cells = rows.Select(row => row.U == 0
            ? (Value: Shortened(shown.FromSi(row.Si), 15), Spread: "")
            : (Rounded(row.Si, row.U, shown).Value, Rounded(row.Si, row.U, shown).Spread)).ToList();
        var before = cells.Max(cell => Whole(cell.Value));
        var after = cells.Max(cell => cell.Value.Length - Whole(cell.Value));
        var spreads = cells.Max(cell => cell.Spread.Length);
        return [.. cells.Select(cell =>
        {
            var value = cell.Value.PadLeft(cell.Value.Length + before - Whole(cell.Value));
            var spread = cell.Spread.Length == 0 ? new string(' ', spreads + 3) : " ± " + cell.Spread.PadRight(spreads);
            return (spreads == 0 ? value.PadRight(before + after) : value.PadRight(before + after) + spread) + Tail(shown);
        })];
    }

    /// <summary>The shortest text that reads back as the same double; what JSON output carries.</summary>
    public static string RoundTrip(double value) => Guard.Finite(value).ToString("R", CultureInfo.InvariantCulture);

    private static (string Value, string Spread) Rounded(double si, double u, Unit unit)
    {
        var value = unit.FromSi(si);
        var spread = unit.SpanFromSi(u);
        var decimals = -Exponent(spread, 2) + 1;
        return (At(value, decimals), At(spread, decimals));
    }

    /// <summary>Decimal exponent of the number once it is rounded to so many digits: 0.0998 to two digits is 1.0e-1.</summary>
    private static int Exponent(double value, int digits)
    {
        var text = value.ToString("E" + (digits - 1).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return int.Parse(text[(text.IndexOf('E', StringComparison.Ordinal) + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
    }

    /// <summary>The number to a decimal place; beyond 15 places or digits it is written with an exponent.</summary>
    private static string At(double value, int decimals)
    {
        var text = decimals switch
        {
            < 0 when decimals >= -22 => (Math.Round(value / PowersOfTen.Of(-decimals), MidpointRounding.AwayFromZero) * PowersOfTen.Of(-decimals))
                .ToString("F0", CultureInfo.InvariantCulture),
            >= 0 and <= 15 when Math.Abs(value) < 1e15 => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture),
            _ => value.ToString("E" + Math.Clamp(decimals + (value == 0 ? 0 : Exponent(value, 3)), 0, 16).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture),
        };
        return text.StartsWith('-') && text.All(c => c is '-' or '0' or '.') ? text[1..] : text;
    }

    private static string Shortened(double value, int digits)
    {
        var text = value.ToString("G" + digits.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        // 26112 h to four digits is 26110 h for people, and no power of ten.
        if (text.Contains("E+", StringComparison.Ordinal) && Exponent(value, digits) is < 9 and var exponent) text = At(value, digits - 1 - exponent);
        return text == "-0" ? "0" : text;
    }

    private static bool LeavesPrefix(string value) => Whole(value.TrimStart('-')) > 3 && !value.Contains('E', StringComparison.Ordinal);

    private static int Whole(string number)
    {
        var mark = number.IndexOfAny(['.', 'E']);
        return mark < 0 ? number.Length : mark;
    }

    private static string Tail(Unit unit) => unit.Symbol is "1" ? "" : unit.Symbol is "°" ? unit.Symbol : " " + unit.Symbol;
}
