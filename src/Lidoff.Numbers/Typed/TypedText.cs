using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed;

/// <summary>
/// A typed line brought to plain characters: digits of any script, all sorts of minus and blank, full-width letters and
/// letters of other alphabets that look Latin. What was changed beyond habit is told in <paramref name="Remarks"/>.
/// </summary>
internal sealed partial record TypedText(string Raw, string Plain, IReadOnlyList<string> Remarks)
{
    /// <summary>Longest line read; longer input is a paste gone wrong.</summary>
    public const int Longest = 200;

    /// <summary>Cleans a line that is to hold a number; a fault when it is empty or too long.</summary>
    public static Outcome<TypedText> Of(string? raw, string where)
    {
        if (string.IsNullOrWhiteSpace(raw)) return TypedSentences.Empty(where);
        if (raw.Length > Longest) return TypedSentences.TooLong(where, raw.Length, Longest);
        var plain = new StringBuilder(raw.Length);
        var lookAlikes = new List<char>();
        var invisible = 0;
        var scripts = new SortedSet<int>();
        foreach (var c in raw)
        {
            if (LookAlikes.IsInvisible(c))
            {
                invisible++;
                continue;
            }

            var digit = CharUnicodeInfo.GetDecimalDigitValue(c);
            if (digit >= 0 && CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.DecimalDigitNumber)
            {
                scripts.Add(c - digit);
                plain.Append((char)('0' + digit));
                continue;
            }

            if (LookAlikes.Latin(c) is { } latin && c is not ('\u03BC' or '\u2126' or '\u212A'))
            {
                lookAlikes.Add(c);
                plain.Append(latin);
                continue;
            }

            plain.Append(Mapped(c));
        }

        var remarks = new List<string>();
        if (lookAlikes.Count > 0) remarks.Add(TypedSentences.LookAlikeLetters(lookAlikes));
        if (invisible > 0) remarks.Add(TypedSentences.InvisibleDropped(invisible));
        if (scripts.Count > 1) remarks.Add(TypedSentences.MixedDigits);
        var text = plain.ToString().Replace("+/-", "±", StringComparison.Ordinal).Replace("+-", "±", StringComparison.Ordinal).Trim();
        text = Per().Replace(Share().Replace(text, match => match.Groups[1].Value.Equals("cent", StringComparison.OrdinalIgnoreCase) ? "%" : "‰"), " /");
        return text.Length == 0 ? TypedSentences.Empty(where) : new TypedText(raw, text, remarks);
    }

    // Per cent and per mille divide by nothing: they are units of their own, in one word or two. "per mil" is not among them, since a
    // mil is a thousandth of an inch here.
    [GeneratedRegex(@"(?<!\p{L})per\s?(cent|mille)(?![\p{L}\p{N}])", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Share();

    // "2 per day" is 2/day.
    [GeneratedRegex(@"\s+per\s+", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Per();

    // Dashes that hands and word processors put for minus; superscripts keep their own characters (they are exponents).
    private static string Mapped(char c) => c switch
    {
        '\u2212' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\uFE63' or '\uFF0D' => "-",
        '\uFF0B' or '\uFE62' => "+",
        '\u00A0' or '\u202F' or '\u2009' or '\t' => " ",
        '\u03BC' => "\u00B5",
        '\u2126' => "\u03A9",
        '\u212A' => "K",
        '\u2103' => "°C",
        '\u2109' => "°F",
        '\u00BA' or '\u02DA' => "°",
        '\u2026' => "..",
        '\u2025' => "..",
        '\u066C' or '\u2019' or '\u02BC' => "'",
        _ => char.IsWhiteSpace(c) ? " " : c.ToString(),
    };
}
