using System.Text;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Marks;

/// <summary>What was read of a mark: lines of places, each with what it may be.</summary>
public sealed record MarkLattice(IReadOnlyList<IReadOnlyList<MarkPosition>> Lines)
{
    /// <summary>True when not a single glyph was read.</summary>
    public bool IsBlank => Lines.All(l => l.All(p => p.Alternatives.Count == 0));

    /// <summary>Lines as typed: <c>?</c> one unread glyph, <c>*</c> any number of them.</summary>
    public static MarkLattice OfText(params IReadOnlyList<string> lines) => new([.. Guard.NotNull(lines).Select(OfLine)]);

    /// <summary>The likeliest text, lines with a blank between, for sentences.</summary>
    public string Best()
    {
        var text = new StringBuilder();
        foreach (var line in Lines)
        {
            if (text.Length > 0) text.Append(' ');
            foreach (var place in line) text.Append(place.AnyNumber ? '*' : place.Alternatives.Count == 0 ? '?' : place.Alternatives.MaxBy(a => a.P).Glyph);
        }
        return text.ToString();
    }

    private static IReadOnlyList<MarkPosition> OfLine(string line) =>
        [.. line.Where(c => c is '?' or '*' || Glyphs.Index(c) >= 0).Select(c => c switch
        {
            '?' => MarkPosition.Unread,
            '*' => MarkPosition.Gap,
            _ => MarkPosition.Read(c),
        })];
}
