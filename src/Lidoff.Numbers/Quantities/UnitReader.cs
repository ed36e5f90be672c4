using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Quantities;

/// <summary>
/// Reads a unit as people type it: prefixes (µ of either code point, or u), Ω of either code point or "ohm" or "R", products
/// by a middle dot, "*", "." or a space, quotients by "/", exponents as "^2", "²" or "2". Case counts: a symbol that is
/// only known in another case is asked about.
/// </summary>
public static class UnitReader
{
    private const int Longest = 40;

    /// <summary>The unit written in <paramref name="text"/>, or a fault whose sentence offers what may have been meant.</summary>
    public static Outcome<Unit> Read(string? text, string where)
    {
        if (text is { Length: > Longest }) return QuantitySentences.TooLong(where, text.Length, Longest);
        var clean = Clean(text ?? "");
        if (clean.Length == 0) return QuantitySentences.NoUnit(where);
        if (Symbol(clean) is { } single) return single;
        if (clean.StartsWith("dB", StringComparison.Ordinal)) return QuantitySentences.Decibel(where, clean);
        return Product(clean, where);
    }

    private static Outcome<Unit> Product(string text, string where)
    {
        var factors = new List<(Unit Unit, int Power)>();
        var sign = 1;
        foreach (var part in Parts(text))
        {
            if (part is "/")
            {
                sign = -1;
                continue;
            }

            var (symbol, power) = SplitPower(part);
            if (symbol.Length == 0 && factors.Count > 0) return QuantitySentences.NumberBehindUnit(where);
            if (power is null || symbol.Length == 0) return QuantitySentences.BadExponent(where, part);
            if (Symbol(symbol) is not { } unit) return QuantitySentences.UnknownUnit(where, symbol, Near(symbol));
            if (unit.Offset != 0) return QuantitySentences.OffsetInProduct(where, unit.Symbol);
            factors.Add((unit, sign * power.Value));
        }

        if (factors.Count == 0) return QuantitySentences.UnknownUnit(where, text, []);
        var dimension = Dimension.None;
        // Powers of ten are counted, not multiplied: mm³ is 1e-9 m³ and not 9.999999999999999e-10.
        var (factor, tens) = (1.0, 0);
        foreach (var (unit, power) in factors)
        {
            var exponent = PowersOfTen.ExponentOf(unit.Factor);
            tens += power * (exponent ?? 0);
            for (var i = 0; i < Math.Abs(power); i++)
            {
                dimension = power > 0 ? dimension * unit.Dimension : dimension / unit.Dimension;
                if (exponent is null) factor = power > 0 ? factor * unit.Factor : factor / unit.Factor;
            }
        }

        if (Math.Abs(tens) > 22) return QuantitySentences.BadExponent(where, text);
        factor = PowersOfTen.Scale(factor, tens);
        return double.IsFinite(factor) && factor > 0 ? new Unit(Write(factors), dimension, factor) : QuantitySentences.BadExponent(where, text);
    }

    private static Unit? Symbol(string symbol)
    {
        if (UnitSymbols.Plain.TryGetValue(symbol, out var plain)) return plain;
        if (UnitSymbols.Prefixed.TryGetValue(symbol, out var bare)) return bare;
        if (symbol.Length < 2 || SiPrefix.Exponent(symbol[0]) is not { } exponent) return null;
        if (!UnitSymbols.Prefixed.TryGetValue(symbol[1..], out var atom)) return null;
        var prefix = symbol[0] switch { 'u' or '\u03BC' => '\u00B5', 'K' => 'k', var other => other };
        // The gram is 1e-3 kg and the ampere-hour 3600 C: scaling those keeps "1 kg" and "1 mAh" the doubles they should be.
        return new Unit(prefix + atom.Symbol, atom.Dimension, Scaled(atom.Factor, exponent));
    }

    private static double Scaled(double factor, int exponent) => PowersOfTen.ExponentOf(factor) is { } own && Math.Abs(own + exponent) <= 22
        ? PowersOfTen.Of(own + exponent)
        : PowersOfTen.Scale(factor, exponent);

    private static IReadOnlyList<string> Near(string symbol)
    {
        var known = UnitSymbols.Plain.Values.Concat(UnitSymbols.Prefixed.Values).Select(unit => unit.Symbol)
            .Concat(UnitSymbols.Prefixed.Values.SelectMany(unit => "pnµmkMG".Select(prefix => prefix + unit.Symbol)));
        return [.. known.Distinct(StringComparer.Ordinal)
            .Where(candidate => string.Equals(candidate, symbol, StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)];
    }

    private static IEnumerable<string> Parts(string text)
    {
        var start = 0;
        for (var i = 0; i <= text.Length; i++)
        {
            if (i < text.Length && text[i] is not ('·' or '/')) continue;
            if (i > start) yield return text[start..i];
            if (i < text.Length && text[i] == '/') yield return "/";
            start = i + 1;
        }
    }

    private static (string Symbol, int? Power) SplitPower(string part)
    {
        var end = part.Length;
        while (end > 0 && part[end - 1] is >= '0' and <= '9' or '-' or '^') end--;
        if (end == part.Length) return (part, 1);
        var digits = part[end..].TrimStart('^');
        return int.TryParse(digits, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var power) && Math.Abs(power) is > 0 and <= 9
            ? (part[..end], power)
            : (part[..end], null);
    }

    private static string Write(List<(Unit Unit, int Power)> factors)
    {
        var above = string.Join("·", factors.Where(f => f.Power > 0).Select(f => f.Unit.Symbol + Superscript(f.Power)));
        var below = string.Concat(factors.Where(f => f.Power < 0).Select(f => "/" + f.Unit.Symbol + Superscript(-f.Power)));
        return (above.Length == 0 ? "1" : above) + below;
    }

    private static string Superscript(int power) => power switch { 1 => "", _ => "⁰¹²³⁴⁵⁶⁷⁸⁹"[power].ToString() };

    private static string Clean(string text)
    {
        var clean = new System.Text.StringBuilder(text.Length);
        foreach (var c in text.Trim())
        {
            clean.Append(c switch
            {
                '\u03BC' => "\u00B5",
                '\u2126' => "\u03A9",
                '\u212A' => "K",
                '℃' => "°C",
                '℉' => "°F",
                'º' or '˚' => "°",
                '*' or '.' or '⋅' or '∙' or '•' or '×' => "·",
                '−' or '⁻' => "-",
                >= '⁴' and <= '⁹' => ((char)('4' + c - '⁴')).ToString(),
                '⁰' => "0",
                '¹' => "1",
                '²' => "2",
                '³' => "3",
                _ => char.IsWhiteSpace(c) ? "·" : c.ToString(),
            });
        }

        var squeezed = clean.ToString();
        while (squeezed.Contains("··", StringComparison.Ordinal)) squeezed = squeezed.Replace("··", "·", StringComparison.Ordinal);
        return squeezed.Replace("·/", "/", StringComparison.Ordinal).Replace("/·", "/", StringComparison.Ordinal)
            .Replace("°·C", "°C", StringComparison.Ordinal).Replace("°·F", "°F", StringComparison.Ordinal).Trim('·');
    }
}
