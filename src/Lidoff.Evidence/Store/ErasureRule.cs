namespace Lidoff.Evidence.Store;

/// <summary>What to do with a merge whose erasures would remove payloads that are readable here.</summary>
public enum ErasureRule
{
    /// <summary>Refuse the whole merge and say how many it would remove: erasing cannot be taken back, and a pack may come from anybody.</summary>
    Refuse,

    /// <summary>Erase them here too.</summary>
    Follow,
}
