namespace Lidoff.Telling.Documents;

/// <summary>A table with a caption; every row has as many cells as there are headings. <paramref name="NumberColumns"/> are set flush right.</summary>
public sealed record Table(string Caption, IReadOnlyList<string> Headings, IReadOnlyList<IReadOnlyList<IReadOnlyList<Inline>>> Rows, IReadOnlySet<int> NumberColumns) : Block;
