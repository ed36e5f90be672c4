namespace Lidoff.Naming.Marks;

/// <summary>How a part's name becomes what stands on its body.</summary>
public enum MarkFormKind
{
    /// <summary>The whole base number.</summary>
    Full,

    /// <summary>The number of an orderable variant.</summary>
    OrderCode,

    /// <summary>Letters in front left out, all or all but one (nRF52832 as N52832).</summary>
    PrefixDropped,

    /// <summary>What follows the number left out.</summary>
    SuffixDropped,

    /// <summary>Only a piece from the middle.</summary>
    Middle,

    /// <summary>A pattern the catalogue knows, a short code for instance.</summary>
    Pattern,

    /// <summary>Nothing of the number: a short code nobody wrote down, a lot number alone.</summary>
    Unknown,
}
