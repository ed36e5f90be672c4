namespace Lidoff.Catalogue.Tables;

/// <summary>What a cell of a number column turned out to be.</summary>
public enum NumberVerdict
{
    /// <summary>Nothing in it.</summary>
    Empty,

    /// <summary>A number.</summary>
    Number,

    /// <summary>Three digits after a lone mark: thousands or decimals, the file does not tell.</summary>
    Ambiguous,

    /// <summary>Not a finite number.</summary>
    Not,
}
