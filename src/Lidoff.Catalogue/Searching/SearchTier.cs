namespace Lidoff.Catalogue.Searching;

/// <summary>How a part was found; the order is the order of the answers.</summary>
public enum SearchTier
{
    /// <summary>Its name is the text.</summary>
    Name,

    /// <summary>One of its order codes or marks is the text.</summary>
    Code,

    /// <summary>Its name, an order code or a mark starts with the text.</summary>
    Prefix,

    /// <summary>Its name, an order code or a mark holds the text.</summary>
    Infix,

    /// <summary>Every word of the text stands in its names, maker or class words.</summary>
    Words,

    /// <summary>As <see cref="Infix"/> when look-alike signs count as one (0 and O, 8 and B).</summary>
    Alike,

    /// <summary>As <see cref="Alike"/> with one more sign misread, dropped or added; only asked when nothing stricter was found.</summary>
    OneEdit,

    /// <summary>Not found.</summary>
    None,
}
