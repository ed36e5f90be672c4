using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed;

/// <summary>A number as somebody typed it.</summary>
/// <param name="Value">The number, finite.</param>
/// <param name="Digits">The same in the form 1234.5e-3, from which it can be scaled without a second rounding.</param>
/// <param name="LastPlace">Exponent of its last digit: -2 for 3.70.</param>
/// <param name="Raw">What was typed.</param>
/// <param name="Remarks">What a person should know of how it was read; empty as a rule.</param>
public sealed record TypedNumber(double Value, string Digits, int LastPlace, string Raw, IReadOnlyList<string> Remarks)
{
    /// <summary>
    /// Reads a number without unit: <c>3,7</c>, <c>1 000,5</c>, <c>2k2</c>, <c>0x4A</c>, <c>1.2e-3</c>, <c>5×10⁻³</c>. Where it can be
    /// read two ways (<c>1.000</c>, <c>4Ah</c>) the fault is a question that names both.
    /// </summary>
    public static Outcome<TypedNumber> Read(string? text, string where, DecimalMark mark = DecimalMark.Ask)
    {
        var cleaned = TypedText.Of(text, where);
        if (!cleaned.TryValue(out var typed)) return Outcome<TypedNumber>.Failed(cleaned.Faults);
        var scan = NumberScan.At(typed.Plain, where, mark);
        if (!scan.TryValue(out var found)) return Outcome<TypedNumber>.Failed(scan.Faults);
        var rest = typed.Plain[found.End..].Trim();
        if (NumberScan.CouldBeHexadecimal(typed.Plain)) return TypedSentences.HexOrUnit(where, typed.Plain);
        if (rest.Length > 0) return TypedSentences.AfterNumber(where, rest);
        return found.Number(typed.Raw, typed.Remarks);
    }

    /// <summary>The number taken in a unit, in SI, rounded once where the unit is a power of ten.</summary>
    public double InSi(Unit unit) => unit.Offset == 0 ? SpanInSi(unit) : unit.ToSi(Value);

    /// <summary>The number taken as a difference or uncertainty in a unit, in SI.</summary>
    public double SpanInSi(Unit unit) => PowersOfTen.ExponentOf(unit.Factor) is { } exponent
        ? double.Parse(Shift(Digits, exponent), NumberStyles.Float, CultureInfo.InvariantCulture)
        : unit.SpanToSi(Value);

    private static string Shift(string digits, int exponent)
    {
        var e = digits.IndexOf('e', StringComparison.Ordinal);
        var own = e < 0 ? 0 : int.Parse(digits[(e + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        return (e < 0 ? digits : digits[..e]) + "e" + (own + exponent).ToString(CultureInfo.InvariantCulture);
    }
}
