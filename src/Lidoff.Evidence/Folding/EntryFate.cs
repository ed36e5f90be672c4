namespace Lidoff.Evidence.Folding;

/// <summary>What became of an entry in the fold. Nothing ever leaves the journal.</summary>
public enum EntryFate
{
    /// <summary>It counts.</summary>
    Live,

    /// <summary>A better one took its place.</summary>
    Superseded,

    /// <summary>Taken back.</summary>
    Undone,

    /// <summary>Its payload was erased by right; what leant on it says "support erased".</summary>
    Erased,

    /// <summary>This program does not know its kind or its version; kept, merged and shown.</summary>
    Unknown,

    /// <summary>Its payload could not be read; kept and shown with the faults.</summary>
    Refused,
}
