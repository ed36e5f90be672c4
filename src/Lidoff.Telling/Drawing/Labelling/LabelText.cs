using System.Globalization;
using System.Text;
using Lidoff.Seeing.Lettering;
using Lidoff.Telling.Writing;

namespace Lidoff.Telling.Drawing.Labelling;

/// <summary>Hostile text made fit for a drawing: no sign that hides, reorders or breaks XML, and never wider than its place.</summary>
internal static class LabelText
{
    // Nobody reads more than this beside a picture, and measuring a text of a million letters takes time.
    private const int MostLetters = 300;
    private const string More = "…";

    /// <summary>Text on one line, hidden and reordering characters shown by their code points, halves of pairs and non-characters replaced.</summary>
    public static string Clean(string text)
    {
        var clean = new StringBuilder();
        var letters = 0;
        foreach (var letter in text.EnumerateRunes())
        {
            if (++letters > MostLetters) return clean.ToString().TrimEnd() + More;
            // XML 1.0 (section 2.2) has no U+FFFE and U+FFFF; the other planes' last two are non-characters of Unicode as well.
            if ((letter.Value & 0xFFFE) == 0xFFFE) clean.Append('\uFFFD');
            else if (Rune.IsWhiteSpace(letter)) clean.Append(' ');
            else if (Rune.GetUnicodeCategory(letter) is UnicodeCategory.Format or UnicodeCategory.Control) clean.Append(CultureInfo.InvariantCulture, $"[U+{letter.Value:X4}]");
            else clean.Append(letter.ToString());
        }

        return Escaping.Shown(clean.ToString()).Trim();
    }

    /// <summary>Clean text broken at spaces into at most <paramref name="lines"/> lines no wider than <paramref name="most"/> cap heights; what is left out ends in "…".</summary>
    public static IReadOnlyList<string> Wrap(string clean, double most, int lines)
    {
        var wrapped = new List<string>();
        var line = "";
        foreach (var word in clean.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, most)))
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            if (LetterShapes.Width(longer) <= most)
            {
                line = longer;
                continue;
            }

            wrapped.Add(line);
            line = word;
        }

        if (line.Length > 0) wrapped.Add(line);
        if (wrapped.Count <= lines) return wrapped;
        return [.. wrapped.Take(lines - 1), Shortened(wrapped[lines - 1] + " " + wrapped[lines], most)];
    }

    private static string Shortened(string line, double most)
    {
        var letters = line.EnumerateRunes().Select(rune => rune.ToString()).ToList();
        while (letters.Count > 0 && LetterShapes.Width(string.Concat(letters).TrimEnd() + More) > most) letters.RemoveAt(letters.Count - 1);
        return string.Concat(letters).TrimEnd() + More;
    }

    /// <summary>A word too wide for a line, in pieces that fit.</summary>
    private static IEnumerable<string> Pieces(string word, double most)
    {
        var piece = "";
        foreach (var letter in word.EnumerateRunes().Select(rune => rune.ToString()))
        {
            if (piece.Length > 0 && LetterShapes.Width(piece + letter) > most)
            {
                yield return piece;
                piece = "";
            }

            piece += letter;
        }

        yield return piece;
    }
}
