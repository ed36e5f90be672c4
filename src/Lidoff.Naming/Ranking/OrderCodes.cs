using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;
using Lidoff.Naming.Factors;
using Lidoff.Naming.Marks;

namespace Lidoff.Naming.Ranking;

/// <summary>Which order codes of a part the evidence leaves.</summary>
internal static class OrderCodes
{
    /// <summary>
    /// Codes whose package fits the outline and whose ending stands in the mark, where any does; a code with placeholders (QFxx) stands
    /// only where no full one fits. An ending of one letter proves nothing.
    /// </summary>
    internal static IReadOnlyList<string> Narrow(Part part, NameEvidence evidence)
    {
        if (part.OrderCodes.Count == 0) return [];
        var full = part.OrderCodes.Where(o => !o.Contains("xx", StringComparison.Ordinal)).ToArray();
        return ByMark(part, ByOutline(part, full.Length > 0 ? full : [.. part.OrderCodes], evidence), evidence);
    }

    /// <summary>Drops codes whose every known package is a thousand times less likely than the best one.</summary>
    private static string[] ByOutline(Part part, string[] codes, NameEvidence evidence)
    {
        var factors = FactorRegistry.All.OfType<OutlineFactor>().Where(f => f.Speaks(evidence)).ToArray();
        var fits = part.Packages.Select(p => factors.Aggregate(1.0, (fit, f) => fit * ((f.Likelihood(evidence, p) ?? f.Wide(evidence)) / f.Wide(evidence)))).ToArray();
        if (factors.Length == 0 || fits.Length == 0) return codes;
        var least = fits.Max() / 1000;
        var unfit = part.Packages.Where((_, i) => fits[i] < least).SelectMany(p => p.OrderCodes).ToHashSet(StringComparer.Ordinal);
        unfit.ExceptWith(part.Packages.Where((_, i) => fits[i] >= least).SelectMany(p => p.OrderCodes));
        var left = codes.Where(c => !unfit.Contains(c)).ToArray();
        return left.Length > 0 ? left : codes;
    }

    private static string[] ByMark(Part part, string[] codes, NameEvidence evidence)
    {
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
