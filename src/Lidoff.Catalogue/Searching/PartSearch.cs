using Lidoff.Catalogue.Indexing;
using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Searching;

/// <summary>Runs searches over the parts; with an index it looks only at the parts that the index proposes, without one at all of them, and the answers are the same.</summary>
internal sealed class PartSearch(IReadOnlyList<Part> parts, Func<SearchIndex?> openIndex)
{
    private readonly Lazy<SearchIndex?> index = new(openIndex);
    private readonly SearchDocument?[] documents = new SearchDocument?[parts.Count];

    public SearchResult Search(string text, int limit)
    {
        var query = new SearchQuery(text);
        var rows = Rows(Strict(query), i => query.TierOf(Document(i)));
        if (rows.Count == 0) rows = Rows(Loose(query), i => query.IsOneEditFrom(Document(i)) ? SearchTier.OneEdit : SearchTier.None);
        rows.Sort(Order);
        return new SearchResult(text, [.. rows.Take(limit)], rows.Count);
    }

    // Better tier first, then the shorter name, then by name: never by where a row came from.
    private static int Order(SearchRow a, SearchRow b)
    {
        var tier = a.Tier.CompareTo(b.Tier);
        if (tier != 0) return tier;
        var length = a.Part.Name.Length.CompareTo(b.Part.Name.Length);
        return length != 0 ? length : string.CompareOrdinal(a.Part.Name, b.Part.Name);
    }

    private List<SearchRow> Rows(IEnumerable<int> numbers, Func<int, SearchTier> tierOf)
    {
        var rows = new List<SearchRow>();
        foreach (var i in numbers)
        {
            var tier = tierOf(i);
            if (tier != SearchTier.None) rows.Add(new SearchRow(parts[i], tier));
        }

        return rows;
    }

    private IEnumerable<int> Strict(SearchQuery query)
    {
        var pieces = query.HasWildcards ? Wildcard.Literals(query.Alike) : [query.Alike];
        var alike = pieces.Where(p => p.Length >= SearchIndex.ShortestWord).ToList();
        var words = query.HasWildcards ? [] : query.Words.Where(w => w.Length >= SearchIndex.ShortestWord).ToList();
        if (alike.Count == 0 || index.Value is not { } proposed) return Everything;
        // A name that holds the text also holds it with look-alikes brought together, so two questions cover all tiers.
        var numbers = proposed.HoldingAlike(alike);
        if (query.HasWildcards) return numbers;
        return words.Count == 0 ? Everything : numbers.Union(proposed.Holding(words));
    }

    private IEnumerable<int> Loose(SearchQuery query)
    {
        // One edit leaves one half of the text untouched.
        var half = query.Alike.Length / 2;
        if (half < SearchIndex.ShortestWord || index.Value is not { } proposed) return Everything;
        return proposed.HoldingAnyAlike([query.Alike[..half], query.Alike[half..]]);
    }

    private IEnumerable<int> Everything => Enumerable.Range(0, parts.Count);

    private SearchDocument Document(int number) => documents[number] ??= SearchDocument.Of(parts[number]);
}
