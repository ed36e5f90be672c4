namespace Lidoff.Catalogue.Importing;

/// <summary>A node of a bracketed file: a word (then it has no items) or a list. <paramref name="Line"/> is where it starts.</summary>
internal sealed record Expression(int Line, string? Word, IReadOnlyList<Expression> Items)
{
    /// <summary>The first word of a list, empty for a word or an empty list.</summary>
    public string Head => Items.Count > 0 ? Items[0].Word ?? "" : "";

    /// <summary>The word at a place of a list, empty where there is none.</summary>
    public string At(int place) => place < Items.Count ? Items[place].Word ?? "" : "";

    /// <summary>The lists within this one that start with a word.</summary>
    public IEnumerable<Expression> Lists(string head) => Items.Where(i => i.Word is null && i.Head == head);
}
