using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed;

/// <summary>Reads what stands behind a number: a unit, a bare prefix of the field's own unit (100n), or the letter inside 4R7.</summary>
internal sealed class UnitBehindNumber(string whole, Unit? expected, string where)
{
    /// <summary>The unit, or null when none was typed.</summary>
    public Outcome<Unit?> Read(string rest, char? letter, bool allowRelative)
    {
        var inside = letter switch { 'R' or 'r' => Units.Ohm, 'V' => Units.Volt, 'F' => Units.Farad, 'H' => Units.Henry, _ => null };
        if (rest.Length == 0)
        {
            if (inside is null) return letter is null || TakesPrefix(expected) ? (Outcome<Unit?>)(Unit?)null : TypedSentences.LetterForm(where, whole, expected!);
            return Fits(inside);
        }

        // What a field prints beside itself it takes back, also where a unit begins with a digit (1/h).
        if (inside is null && expected is not null && rest == expected.Symbol) return expected;
        if (expected is not null && BarePrefix(rest, expected) is { } prefixed) return prefixed;
        if (expected is null && rest.Length == 1 && rest[0] is 'k' or 'M' or 'G' && SiPrefix.Exponent(rest[0]) is { } exponent) return new Unit("1", Dimension.None, PowersOfTen.Of(exponent));
        if (UnusualRest(rest) is { } fault) return fault;
        var unit = UnitReader.Read(rest, where);
        if (!unit.TryValue(out var read)) return Outcome<Unit?>.Failed(unit.Faults);
        if (inside is not null && read != inside) return TypedSentences.AfterNumber(where, rest);
        if (rest == "m" && expected is not null && expected.Dimension != Dimensions.Length && TakesPrefix(expected)) return TypedSentences.MilliOrMega(where, whole, expected);
        return allowRelative && read.Dimension == Dimension.None ? read : Fits(read);
    }

    private Outcome<Unit?> Fits(Unit unit) => expected is null || unit.Dimension == expected.Dimension
        ? unit
        : new Fault(where, Dimensions.Name(expected.Dimension), QuantitySentences.WrongDimension(whole, unit, expected));

    private Fault? UnusualRest(string rest)
    {
        if (rest[0] is 'O' or 'o' or 'l' && (rest.Length == 1 || char.IsAsciiDigit(rest[1]))) return TypedSentences.LetterForDigit(where, whole, rest[0]);
        if (char.IsAsciiDigit(rest[0]) || rest[0] is '.' or ',') return TypedSentences.AfterNumber(where, rest);
        if (rest[0] is '-' && rest.Length > 1 && (char.IsAsciiDigit(rest[1]) || rest[1] == ' ')) return TypedSentences.DashOrRange(where, whole);
        return null;
    }

    /// <summary>47k, 100n, 4u7 style: the prefix of the field's own unit. K counts as kilo wherever kelvin is not what is asked for.</summary>
    private static Unit? BarePrefix(string rest, Unit expected)
    {
        if (rest.Length != 1 || rest[0] is not ('p' or 'n' or 'u' or '\u00B5' or 'k' or 'K' or 'M' or 'G') || !TakesPrefix(expected)) return null;
        var coherent = Coherent(expected);
        var exponent = SiPrefix.Exponent(rest[0])!.Value;
        return new Unit(SiPrefix.Symbol(exponent) + (coherent == "1" ? "" : coherent), expected.Dimension, PowersOfTen.Of(exponent));
    }

    private static bool TakesPrefix(Unit? unit) => unit is null || unit.Dimension == Dimension.None || unit.Dimension == Dimensions.Resistance
        || unit.Dimension == Dimensions.Capacitance || unit.Dimension == Dimensions.Inductance || unit.Dimension == Dimensions.Frequency
        || unit.Dimension == Dimensions.Voltage || unit.Dimension == Dimensions.Current;

    private static string Coherent(Unit unit) =>
        unit.Dimension == Dimension.None ? "1" : UnitSymbols.Prefixed.Values.First(atom => atom.Dimension == unit.Dimension && atom.Factor == 1).Symbol;
}
