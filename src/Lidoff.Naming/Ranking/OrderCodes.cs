using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;
using Lidoff.Naming.Marks;

namespace Lidoff.Naming.Ranking;

/// <summary>Which order codes of a part the evidence leaves.</summary>
internal static class OrderCodes
{
    /// <summary>
    /// Codes whose ending stands in the mark, where any does; all of them otherwise. An ending of one letter proves nothing, and a code
    /// with placeholders (QFxx) stands only where no full one fits.
    /// </summary>
    internal static IReadOnlyList<string> Narrow(Part part, NameEvidence evidence)
    {
        if (part.OrderCodes.Count == 0) return [];
        var full = part.OrderCodes.Where(o => !o.Contains("xx", StringComparison.Ordinal)).ToArray();
        var codes = full.Length > 0 ? full : part.OrderCodes;
        if (evidence.Mark is not { IsBlank: false } mark) return codes;
        var query = MarkQuery.Of(mark);
        var name = MarkForms.Letters(part.Name);
        var fitting = codes.Where(c => Ending(MarkForms.Letters(c), name) is { Length: >= 2 } ending && Stands(ending, query)).ToArray();
        return fitting.Length > 0 ? fitting : codes;
    }

    private static string Ending(string code, string name) => code.StartsWith(name, StringComparison.Ordinal) ? code[name.Length..] : code;

    /// <summary>True when the ending can be read at some place of the mark, one unread glyph at most.</summary>
    private static bool Stands(string ending, MarkQuery query)
    {
        for (var at = 0; at + ending.Length <= query.Length; at++)
        {
            int unread = 0, right = 0;
            for (var i = 0; i < ending.Length; i++)
            {
                unread += query.Best[at + i] < 0 ? 1 : 0;
                right += query.Best[at + i] >= 0 && query.Gains[at + i][Glyphs.Index(ending[i])] > 0 ? 1 : 0;
            }
            if (unread <= 1 && right + unread == ending.Length && right >= 2) return true;
        }
        return false;
    }
}
