using System.Globalization;
using Lidoff.Numbers.Quantities;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>
/// The letter-for-decimal-mark code of IEC 60062: 4R7, R47, 470R, 4K7, 3p3, n33, with or without a tolerance letter behind
/// (4K7J). Case counts only between M (mega) and m (milli); L for milliohm is from memory.
/// </summary>
public static class RkmCode
{
    /// <summary>Rule name of its readings.</summary>
    public const string Rule = "RKM, IEC 60062";

    /// <summary>Every reading; empty when the text is no such code.</summary>
    public static IReadOnlyList<CodeReading> Read(string? text)
    {
        if (text is not { Length: >= 2 and <= 7 }) return [];
        foreach (var withTolerance in (bool[])[false, true])
        {
            var body = withTolerance ? text[..^1] : text;
            if (Value(body) is not { } value) continue;
            var tolerances = withTolerance ? ToleranceLetters.Read(text[^1], value.Unit == Units.Farad ? value.Si : null) : [];
            if (!withTolerance || tolerances.Count > 0) return [new(value.Si, value.Unit, Rule, tolerances)];
        }

        return [];
    }

    private static (double Si, Unit Unit)? Value(string body)
    {
        var at = body.AsSpan().IndexOfAnyExceptInRange('0', '9');
        if (at is < 0 or > 3 || body.Length < 2 || body.Length - at > 5 || body[(at + 1)..].Any(c => !char.IsAsciiDigit(c))) return null;
        if (Meaning(body[at]) is not { } meaning) return null;
        var digits = (at == 0 ? "0" : body[..at]) + (at == body.Length - 1 ? "" : "." + body[(at + 1)..]) + "e" + meaning.Exponent.ToString(CultureInfo.InvariantCulture);
        return (double.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture), meaning.Unit);
    }

    private static (int Exponent, Unit Unit)? Meaning(char letter) => letter switch
    {
        'R' or 'r' => (0, Units.Ohm),
        'L' => (-3, Units.Ohm),
        'K' or 'k' => (3, Units.Ohm),
        'M' => (6, Units.Ohm),
        'G' => (9, Units.Ohm),
        'T' => (12, Units.Ohm),
        'p' => (-12, Units.Farad),
        'n' => (-9, Units.Farad),
        'u' or '\u00B5' or '\u03BC' => (-6, Units.Farad),
        'm' => (-3, Units.Farad),
        'F' => (0, Units.Farad),
        _ => null,
    };
}
