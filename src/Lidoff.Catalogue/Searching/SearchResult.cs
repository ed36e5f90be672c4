namespace Lidoff.Catalogue.Searching;

/// <summary>What a search gave: the text as asked, the best rows, and how many there are in all.</summary>
public sealed record SearchResult(string Query, IReadOnlyList<SearchRow> Rows, int Total);
