using Lidoff.Catalogue.Joining;
using Lidoff.Catalogue.Parts;

namespace Lidoff.Catalogue.Searching;

/// <summary>What of a part can be searched: its names (part, order codes, marks without their wildcards), folded, and its words (makers, classes), folded.</summary>
public sealed class SearchDocument
{
    private SearchDocument(IReadOnlyList<string> names, IReadOnlyList<string> words)
    {
        Names = names;
        AlikeNames = [.. names.Select(LookAlikes.Of)];
        Words = words;
    }

    /// <summary>Names, the part's own first.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>The same with look-alikes brought together.</summary>
    public IReadOnlyList<string> AlikeNames { get; }

    /// <summary>Makers and class words.</summary>
    public IReadOnlyList<string> Words { get; }

    /// <summary>Makes the document of a part.</summary>
    public static SearchDocument Of(Part part)
    {
        var names = new List<string> { PartFold.Of(part.Name) };
        foreach (var code in part.OrderCodes) Add(names, PartFold.Of(code));
        foreach (var mark in part.Marks) Add(names, PartFold.Of(mark.Pattern).Replace("/", "", StringComparison.Ordinal).Replace("*", "", StringComparison.Ordinal).Replace("?", "", StringComparison.Ordinal));
        var words = new List<string>();
        Add(words, PartFold.Of(part.Maker));
        foreach (var maker in part.OtherMakers) Add(words, PartFold.Of(maker));
        foreach (var word in part.Classes) Add(words, PartFold.Of(word));
        Add(words, PartFold.Of(part.Kind));
        return new SearchDocument(names, words);
    }

    /// <summary>True when a folded word stands in a name, a maker or a class word.</summary>
    public bool Holds(string word) =>
        Names.Any(n => n.Contains(word, StringComparison.Ordinal)) || Words.Any(w => w.Contains(word, StringComparison.Ordinal));

    private static void Add(List<string> list, string word)
    {
        if (word.Length > 0 && !list.Contains(word)) list.Add(word);
    }
}
