using Lidoff.Numbers.Failing;

namespace Lidoff.Telling.Claims;

/// <summary>
/// A claim's sentence cut into words and references. A reference stands in braces (<c>{length:U1:long side}</c>); a brace that is
/// meant as such is doubled.
/// </summary>
public sealed record ClaimText(IReadOnlyList<ClaimPiece> Pieces)
{
    /// <summary>The references in the order they first appear, each once.</summary>
    public IReadOnlyList<string> References { get; } = [.. Pieces.Where(piece => piece.IsReference).Select(piece => piece.Text).Distinct(StringComparer.Ordinal)];

    /// <summary>Cuts a sentence; a brace without its partner or an empty reference is a fault.</summary>
    public static Outcome<ClaimText> Parse(string text)
    {
        var pieces = new List<ClaimPiece>();
        var words = new System.Text.StringBuilder();
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (c is '{' or '}' && i + 1 < text.Length && text[i + 1] == c)
            {
                words.Append(c);
                i++;
                continue;
            }

            if (c == '}') return TellingSentences.LoneBrace(i);
            if (c != '{')
            {
                words.Append(c);
                continue;
            }

            var end = text.IndexOf('}', i);
            if (end < 0) return TellingSentences.LoneBrace(i);
            var reference = text[(i + 1)..end].Trim();
            if (reference.Length == 0 || reference.Contains('{')) return TellingSentences.EmptyReference(i);
            if (words.Length > 0) pieces.Add(new ClaimPiece(words.ToString(), false));
            words.Clear();
            pieces.Add(new ClaimPiece(reference, true));
            i = end;
        }

        if (words.Length > 0) pieces.Add(new ClaimPiece(words.ToString(), false));
        return new ClaimText(pieces);
    }
}
