using System.Globalization;
using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed;

/// <summary>A number found at the start of cleaned text, and where it ends.</summary>
/// <param name="Digits">Sign, digits with a point, and e-exponent.</param>
/// <param name="LastPlace">Exponent of the last digit.</param>
/// <param name="End">First character behind the number.</param>
/// <param name="Settles">The decimal mark this number proves for its neighbours; null when it proves none.</param>
/// <param name="Letter">The letter that stood for the decimal mark (2k2: k), else null.</param>
internal sealed record NumberScan(string Digits, int LastPlace, int End, DecimalMark? Settles, char? Letter)
{
    private const int MostDigits = 40;

    /// <summary>Scans one number; leading blanks and a sign are taken with it.</summary>
    public static Outcome<NumberScan> At(string text, string where, DecimalMark mark)
    {
        var at = 0;
        var sign = "";
        while (at < text.Length && text[at] is ' ' or '+' or '-')
        {
            if (text[at] is not ' ')
            {
                if (sign.Length > 0) return TypedSentences.TwoSigns(where, text);
                sign = text[at].ToString();
            }

            at++;
        }

        var minus = sign == "-" ? "-" : "";
        if (at >= text.Length) return TypedSentences.NoNumber(where, text);
        if (Hexadecimal(text, at) is { } hex) return hex with { Digits = minus + hex.Digits };
        var body = Body(text, at);
        if (LetterAsMark(text, at, body) is { } letter) return Checked(letter with { Digits = minus + letter.Digits }, text, where);
        if (body == at || !text[at..body].Any(char.IsAsciiDigit)) return TypedSentences.NoNumber(where, text);
        var marks = DecimalMarks.Resolve(text[at..body], mark, where, HasExponent(text, body));
        if (!marks.TryValue(out var plain)) return Outcome<NumberScan>.Failed(marks.Faults);
        var (exponent, end) = Exponent(text, body);
        var point = plain.Digits.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : plain.Digits.Length - point - 1;
        if (Math.Abs(exponent) > 999) return TypedSentences.OutOfRange(where, text[..end].Trim());
        var digits = minus + plain.Digits + (exponent == 0 ? "" : "e" + exponent.ToString(CultureInfo.InvariantCulture));
        return Checked(new NumberScan(digits, exponent - decimals, end, plain.Settles, null), text, where);
    }

    /// <summary>The value with what was typed.</summary>
    public TypedNumber Number(string raw, IReadOnlyList<string> remarks) => new(Value, Digits, LastPlace, raw, remarks);

    /// <summary>The value.</summary>
    public double Value => double.Parse(Digits, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>True for 4Ah, 0FFh: digits and A to F with an h behind, with at least one such letter.</summary>
    public static bool CouldBeHexadecimal(string text) => text.Length >= 3 && text[^1] is 'h' or 'H' && char.IsAsciiDigit(text[0])
        && text[..^1].All(char.IsAsciiHexDigit) && text[..^1].Any(char.IsAsciiLetter);

    private static Outcome<NumberScan> Checked(NumberScan scan, string text, string where)
    {
        if (scan.Digits.Count(char.IsAsciiDigit) > MostDigits) return TypedSentences.TooManyDigits(where, MostDigits);
        var value = scan.Value;
        if (!double.IsFinite(value)) return TypedSentences.OutOfRange(where, text[..scan.End].Trim());
        var lost = value == 0 && scan.Digits.Split('e')[0].Any(c => c is >= '1' and <= '9');
        return lost ? TypedSentences.OutOfRange(where, text[..scan.End].Trim()) : scan;
    }

    private static NumberScan? Hexadecimal(string text, int at)
    {
        if (at + 2 >= text.Length || text[at] != '0' || text[at + 1] is not ('x' or 'X')) return null;
        var end = at + 2;
        while (end < text.Length && char.IsAsciiHexDigit(text[end])) end++;
        if (end == at + 2 || end - at - 2 > 12) return null;
        var value = long.Parse(text.AsSpan(at + 2, end - at - 2), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture);
        return new(value.ToString(CultureInfo.InvariantCulture), 0, end, null, null);
    }

    /// <summary>End of the run of digits, marks and group separators. A blank belongs to it only before a full group of three.</summary>
    private static int Body(string text, int at)
    {
        var end = at;
        while (end < text.Length)
        {
            var c = text[end];
            var nextIsDigit = end + 1 < text.Length && char.IsAsciiDigit(text[end + 1]);
            var afterDigit = end > at && char.IsAsciiDigit(text[end - 1]);
            if (char.IsAsciiDigit(c)) end++;
            else if (c is '.' or ',' or '\u066B' && nextIsDigit) end++;
            else if (c is ' ' or '\'' or '_' && afterDigit && GroupFollows(text, end + 1)) end++;
            else if (c is ' ' && nextIsDigit && DecimalGroupEnds(text, at, end)) end++;
            else if (c == '.' && afterDigit && end == text.Length - 1) return end + 1;
            else break;
        }

        return end;
    }

    // 100.021 47: decimals are written in threes too (SI brochure, 5.4.4), the last group shorter.
    private static bool DecimalGroupEnds(string text, int at, int end)
    {
        var start = end;
        while (start > at && char.IsAsciiDigit(text[start - 1])) start--;
        return end - start == 3 && start > at && (text[start - 1] is '.' or ',' || (text[start - 1] == ' ' && text[at..start].AsSpan().IndexOfAny('.', ',') >= 0));
    }

    private static bool GroupFollows(string text, int at)
    {
        var end = at;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        return end - at == 3;
    }

    /// <summary>2k2, 4R7, R47, 0n5: a prefix or unit letter stands where the decimal mark would (IEC 60062).</summary>
    private static NumberScan? LetterAsMark(string text, int at, int body)
    {
        if (body >= text.Length || body - at > 4 || !text[at..body].All(char.IsAsciiDigit)) return null;
        var letter = text[body];
        if (Multiplier(letter) is not { } exponent) return null;
        var end = body + 1;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        var decimals = end - body - 1;
        // 10m2 is an area, not 10.2 milli.
        if (letter == 'm' && decimals == 1 && text[body + 1] is '2' or '3') return null;
        if (decimals is 0 or > 4 || (end < text.Length && (text[end] is '.' or ',' || char.IsAsciiLetterOrDigit(text[end])))) return null;
        var whole = body == at ? "0" : text[at..body];
        var digits = whole + "." + text[(body + 1)..end] + (exponent == 0 ? "" : "e" + exponent.ToString(CultureInfo.InvariantCulture));
        return new(digits, exponent - decimals, end, null, letter);
    }

    private static int? Multiplier(char letter) => letter switch
    {
        'R' or 'r' or 'V' or 'F' or 'H' => 0,
        'k' or 'K' => 3,
        'M' => 6,
        'G' => 9,
        'T' => 12,
        'm' => -3,
        'u' or '\u00B5' => -6,
        'n' => -9,
        'p' => -12,
        _ => null,
    };

    private static bool HasExponent(string text, int body) => Exponent(text, body).End > body;

    private static (int Value, int End) Exponent(string text, int at)
    {
        if (at < text.Length && text[at] is 'e' or 'E' && Integer(text, at + 1) is { } plain) return plain;
        var times = Skip(text, at);
        if (times >= text.Length || text[times] is not ('\u00D7' or 'x' or '*' or '\u00B7')) return (0, at);
        var ten = Skip(text, times + 1);
        if (ten + 2 >= text.Length || text[ten] != '1' || text[ten + 1] != '0') return (0, at);
        if (text[ten + 2] == '^') return Integer(text, ten + 3) ?? (0, at);
        return Superscript(text, ten + 2) ?? (0, at);
    }

    private static (int Value, int End)? Integer(string text, int at)
    {
        var end = at < text.Length && text[at] is '+' or '-' ? at + 1 : at;
        var first = end;
        while (end < text.Length && char.IsAsciiDigit(text[end]) && end - first < 5) end++;
        return end > first ? (int.Parse(text[at..end], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture), end) : null;
    }

    private static (int Value, int End)? Superscript(string text, int at)
    {
        const string digits = "⁰¹²³⁴⁵⁶⁷⁸⁹";
        var end = at;
        var plain = "";
        while (end < text.Length && plain.Length < 5)
        {
            var digit = digits.IndexOf(text[end], StringComparison.Ordinal);
            if (digit >= 0) plain += digit.ToString(CultureInfo.InvariantCulture);
            else if (plain.Length == 0 && text[end] == '\u207B') plain = "-";
            else break;
            end++;
        }

        return plain.Length > 0 && plain != "-" ? (int.Parse(plain, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture), end) : null;
    }

    private static int Skip(string text, int at)
    {
        while (at < text.Length && text[at] == ' ') at++;
        return at;
    }
}
