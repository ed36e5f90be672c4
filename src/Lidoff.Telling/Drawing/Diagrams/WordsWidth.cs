using Lidoff.Numbers.Failing;

namespace Lidoff.Telling.Drawing.Diagrams;

/// <summary>
/// How wide words can be at most in a sans face nobody knows: wide letters count more than any common face makes them, so that what
/// fits here fits there. From memory of DejaVu Sans, the widest in common use: bold, W 1.10, m 1.04, other capitals up to
/// 0.85, small letters up to 0.72 of the size; regular, a tenth less.
/// </summary>
public static class WordsWidth
{
    private const double Regular = 0.9;

    /// <summary>An upper bound of the width of a line of words at a size, in the size's unit.</summary>
    public static double Of(string text, double size, bool bold = false)
    {
        var em = 0.0;
        foreach (var c in Guard.NotNull(text)) em += Em(c);
        return em * size * (bold ? 1 : Regular);
    }

    /// <summary>The words, cut with … where they would be wider than <paramref name="most"/>.</summary>
    public static string Cut(string text, double size, double most)
    {
        if (Of(text, size) <= most) return text;
        var kept = text.Length;
        while (kept > 0 && Of(text[..kept], size) + (Regular * Em('…') * size) > most) kept--;
        // Half a surrogate pair is no letter.
        if (kept > 0 && char.IsHighSurrogate(text[kept - 1])) kept--;
        return text[..kept].TrimEnd() + "…";
    }

    /// <summary>The words on up to so many lines, parted between words where they can be; what does not fit on the last is cut.</summary>
    public static IReadOnlyList<string> Lines(string text, double size, double most, int lines)
    {
        var made = new List<string>();
        var rest = text;
        while (made.Count + 1 < lines && Of(rest, size) > most)
        {
            var at = rest.LastIndexOf(' ', Math.Min(rest.Length - 1, Fitting(rest, size, most)));
            // A word that is wider than the line is cut at the end, not in its middle.
            if (at <= 0) break;
            made.Add(rest[..at]);
            rest = rest[(at + 1)..];
        }

        made.Add(Cut(rest, size, most));
        return made;
    }

    // How many letters fit.
    private static int Fitting(string text, double size, double most)
    {
        var kept = text.Length;
        while (kept > 0 && Of(text[..kept], size) > most) kept--;
        return kept;
    }

    private static double Em(char c) => c switch
    {
        'm' or 'w' or 'M' or 'W' or '@' or '%' or '…' => 1.12,
        >= 'A' and <= 'Z' => 0.88,
        ' ' or '.' or ',' or ':' or ';' or '\'' or 'i' or 'l' or 'j' or '|' or '!' => 0.42,
        > ' ' and <= '~' => 0.73,
        _ => 1.1,
    };
}
