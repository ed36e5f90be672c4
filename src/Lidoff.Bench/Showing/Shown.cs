using System.Globalization;
using System.Text;

namespace Lidoff.Bench.Showing;

/// <summary>
/// Text from outside made fit to stand on a page: what would not be seen, or would turn the reading direction around, is
/// shown by its code point, and what has no end is cut. Escaping for HTML is the page's own work.
/// </summary>
public static class Shown
{
    /// <summary>Longest text shown in full, in characters; beyond it the text's length is said.</summary>
    public const int Most = 400;

    /// <summary>Longest text quoted in a sentence about it, in characters: what was expected stands behind it and must stay readable.</summary>
    public const int MostQuoted = 60;

    /// <summary>The text as it may be shown.</summary>
    public static string Of(string? text) => Of(text, Most);

    /// <summary>The text between quotation marks, cut where it is long, as sentences about what was typed quote it.</summary>
    public static string Quoted(string? text) => $"\"{Briefly(text)}\"";

    /// <summary>The same without quotation marks, for a name inside a sentence.</summary>
    public static string Briefly(string? text) => Of(text, MostQuoted);

    private static string Of(string? text, int most)
    {
        text ??= "";
        var shown = new StringBuilder();
        var count = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (++count > most)
            {
                return shown.Append(CultureInfo.InvariantCulture, $"… ({text.Length:N0} characters)").ToString();
            }
            if (Hidden(rune)) shown.Append(CultureInfo.InvariantCulture, $"⟨U+{rune.Value:X4}⟩");
            else shown.Append(rune.ToString());
        }
        return shown.ToString();
    }

    // Controls, line and paragraph separators, and the format characters: joiners, direction marks, overrides, isolates.
    private static bool Hidden(Rune rune) => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
        or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned || rune == Rune.ReplacementChar;
}
