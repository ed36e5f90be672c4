namespace Lidoff.TestSupport;

/// <summary>What a disk may show after the power failed; both have been seen on real file systems.</summary>
public enum AfterCut
{
    /// <summary>Whatever was not synced is gone: bytes, names, folders.</summary>
    UnsyncedGone,

    /// <summary>Names and folders made it to the disk ahead of time, the bytes that were not synced did not.</summary>
    NamesKeptBytesGone,
}
