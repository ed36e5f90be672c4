namespace Lidoff.Evidence.Registering;

/// <summary>How sure a recogniser is; the surest wins, ties go to the first by name.</summary>
public enum Recognition
{
    /// <summary>Not its kind.</summary>
    No,

    /// <summary>Could be: it is text, and nothing speaks against it.</summary>
    Plausible,

    /// <summary>The content has the kind's shape, though without a mark of its own.</summary>
    Shaped,

    /// <summary>It bears the kind's mark.</summary>
    Marked,
}
