using System.Globalization;
using System.Text;

namespace Lidoff.Numbers.Typed;

/// <summary>
/// Folds marks for search; the raw text is kept beside. The program runs without culture data, where the base library's
/// normalisation leaves everything but ASCII as it is (measured on .NET 10), so the compatibility forms that occur on marks
/// and in pasted part lists stand in small tables here (Unicode Standard, compatibility decompositions, from memory).
/// </summary>
public static class MarkFolding
{
    private const string Scripts = "⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉⁺⁻₊₋";
    private const string ScriptsPlain = "01234567890123456789+-+-";

    /// <summary>
    /// Capitals, one blank between words, none at the ends; full-width, superscript, circled and mathematical forms as plain
    /// ones, digits of any script as ASCII digits, Cyrillic and Greek letters that look Latin as Latin. µ (either code point)
    /// stays µ and Ω stays Ω, because their capitals would be M and O. Folding a folded text changes nothing.
    /// </summary>
    public static string Fold(string raw)
    {
        ArgumentNullException.ThrowIfNull(raw);
        var folded = new StringBuilder(raw.Length);
        foreach (var rune in raw.EnumerateRunes())
        {
            foreach (var c in Plain(rune)) folded.Append(Capital(c));
        }

        return string.Join(' ', folded.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>The search key of a folded mark: blanks dropped, every character replaced by the first of its look-alike class.</summary>
    public static string Key(string folded)
    {
        ArgumentNullException.ThrowIfNull(folded);
        return string.Concat(folded.Where(c => c != ' ').Select(LookAlikes.Key));
    }

    /// <summary>The mark as it would be read upside down, or null when a character has no such reading.</summary>
    public static string? UpsideDown(string folded)
    {
        ArgumentNullException.ThrowIfNull(folded);
        var turned = new StringBuilder(folded.Length);
        for (var i = folded.Length - 1; i >= 0; i--)
        {
            if (folded[i] is ' ' or '?' or '*') turned.Append(folded[i]);
            else if (LookAlikes.Turned(folded[i]) is { } c) turned.Append(c);
            else return null;
        }

        return turned.ToString();
    }

    private static char Capital(char c) => c is '\u00B5' or '\u03A9' ? c : char.ToUpperInvariant(c);

    private static string Plain(Rune rune)
    {
        if (!rune.IsBmp) return Mathematical(rune.Value);
        var c = (char)rune.Value;
        if (LookAlikes.IsInvisible(c)) return "";
        if (c is '\u00B5' or '\u03BC') return "\u00B5";
        if (c is '\u03A9' or '\u2126' or '\u03C9') return "\u03A9";
        if (c == '\u212A') return "K";
        if (c == '\u212B') return "\u00C5";
        var script = Scripts.IndexOf(c, StringComparison.Ordinal);
        if (script >= 0) return ScriptsPlain[script].ToString();
        if (char.GetUnicodeCategory(c) == UnicodeCategory.DecimalDigitNumber) return ((char)('0' + CharUnicodeInfo.GetDecimalDigitValue(c))).ToString();
        if (LookAlikes.Latin(c) is { } latin) return latin.ToString();
        return c switch
        {
            >= '\u2460' and <= '\u2468' => ((char)('1' + c - '\u2460')).ToString(),
            >= '\u24B6' and <= '\u24CF' => ((char)('A' + c - '\u24B6')).ToString(),
            >= '\u24D0' and <= '\u24E9' => ((char)('A' + c - '\u24D0')).ToString(),
            '\uFB00' => "FF",
            '\uFB01' => "FI",
            '\uFB02' => "FL",
            '\u2116' => "NO",
            '\u2122' => "TM",
            '\u2212' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\uFE63' or '\uFF0D' => "-",
            '\uFF0B' => "+",
            '\u2044' or '\u2215' => "/",
            '\u2018' or '\u2019' => "'",
            _ => char.IsWhiteSpace(c) || char.IsControl(c) ? " " : c.ToString(),
        };
    }

    // Mathematical alphabets come in thirteen runs of 52 letters from U+1D400 and five runs of ten digits from U+1D7CE.
    private static string Mathematical(int point) => point switch
    {
        >= 0x1D400 and <= 0x1D6A3 => ((char)('A' + ((point - 0x1D400) % 52 % 26))).ToString(),
        >= 0x1D7CE and <= 0x1D7FF => ((char)('0' + ((point - 0x1D7CE) % 10))).ToString(),
        _ => new Rune(point).ToString(),
    };
}
