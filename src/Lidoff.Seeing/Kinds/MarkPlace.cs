using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>One place of a mark's line: alternatives in the order given; what they lack to one is left for every other character.</summary>
public sealed record MarkPlace(ValueList<MarkGlyph> Top)
{
    // What is less likely than the share that an eye leaves for every other character is not worth a sign. A choice of ours.
    private const double Worth = 0.05;

    // Below one half it is still a guess; a guess is not dressed up as a reading.
    private const double Guess = 0.5;

    /// <summary>
    /// The place as it is typed: its alternatives, likeliest first, with <c>|</c> between them, <c>_</c> for nothing printed there, and
    /// <c>?</c> where all of them together are less likely than not.
    /// </summary>
    public string Written
    {
        get
        {
            var worth = Top.Where(glyph => glyph.P >= Worth).OrderByDescending(glyph => glyph.P).ToList();
            if (worth.Sum(glyph => glyph.P) < Guess) return "?";
            // Most likely nothing, and nothing else: then there is no place.
            if (worth is [{ Character: "", P: > Guess }]) return "";
            return string.Join('|', worth.Select(glyph => glyph.Character switch { "" => "_", "|" or "/" or "_" => glyph.Character + glyph.Character, _ => glyph.Character }));
        }
    }
}
