using Lidoff.Catalogue.Joining;

namespace Lidoff.Catalogue.Searching;

/// <summary>A search text taken apart once: the whole folded as a part name, and its words.</summary>
public sealed class SearchQuery
{
    /// <summary>Longest text that is looked at, signs; the rest is cut off.</summary>
    public const int Longest = 200;

    // Fewer signs lie within one edit of half the catalogue.
    private const int ShortestForEdit = 5;

    /// <summary>Takes a text apart.</summary>
    public SearchQuery(string text)
    {
        var cut = string.Concat((text.Length > Longest ? text[..Longest] : text).Where(c => !char.IsControl(c) || char.IsWhiteSpace(c)));
        Whole = PartFold.Of(cut);
        Words = [.. cut.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(PartFold.Of).Where(w => w.Length > 0)];
        Alike = LookAlikes.Of(Whole);
        HasWildcards = Wildcard.Is(Whole);
    }

    /// <summary>All words run together, folded.</summary>
    public string Whole { get; }

    /// <summary>The words, folded.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary><see cref="Whole"/> with look-alikes brought together.</summary>
    public string Alike { get; }

    /// <summary>True when it holds <c>?</c> or <c>*</c>.</summary>
    public bool HasWildcards { get; }

    /// <summary>The tier of a part, <see cref="SearchTier.OneEdit"/> left aside.</summary>
    public SearchTier TierOf(SearchDocument document)
    {
        if (Whole.Length == 0) return SearchTier.None;
        if (HasWildcards) return WildcardTier(document);
        if (document.Names[0] == Whole) return SearchTier.Name;
        var best = SearchTier.None;
        foreach (var name in document.Names)
        {
            var at = name.IndexOf(Whole, StringComparison.Ordinal);
            if (at < 0) continue;
            var tier = at > 0 ? SearchTier.Infix : name.Length > Whole.Length ? SearchTier.Prefix : SearchTier.Code;
            if (tier < best) best = tier;
        }

        if (best != SearchTier.None) return best;
        if (Words.All(word => document.Holds(word))) return SearchTier.Words;
        return Whole.Length >= 3 && document.AlikeNames.Any(n => n.Contains(Alike, StringComparison.Ordinal)) ? SearchTier.Alike : SearchTier.None;
    }

    /// <summary>True when one edit brings the text to a stretch of a name.</summary>
    public bool IsOneEditFrom(SearchDocument document)
    {
        if (HasWildcards || Whole.Length < ShortestForEdit) return false;
        foreach (var name in document.AlikeNames)
        {
            if (EditDistance.WithinOne(Alike, name)) return true;
        }

        return false;
    }

    private SearchTier WildcardTier(SearchDocument document)
    {
        var best = SearchTier.None;
        var inside = "*" + Whole + "*";
        for (var i = 0; i < document.Names.Count && best > SearchTier.Code; i++)
        {
            var tier = Wildcard.Covers(Whole, document.Names[i]) ? (i == 0 ? SearchTier.Name : SearchTier.Code)
                : Wildcard.Covers(inside, document.Names[i]) ? SearchTier.Infix : SearchTier.None;
            if (tier < best) best = tier;
        }

        if (best != SearchTier.None) return best;
        var alike = "*" + Alike + "*";
        return document.AlikeNames.Any(n => Wildcard.Covers(alike, n)) ? SearchTier.Alike : SearchTier.None;
    }
}
