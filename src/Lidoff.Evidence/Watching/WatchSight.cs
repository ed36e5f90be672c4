namespace Lidoff.Evidence.Watching;

/// <summary>What a look at a watched folder came to.</summary>
public enum WatchSight
{
    /// <summary>A file was taken in.</summary>
    Taken,

    /// <summary>A file's content is here already; it was not taken again.</summary>
    Known,

    /// <summary>A file was refused; it lies where it lay.</summary>
    Refused,

    /// <summary>The folder cannot be read any more.</summary>
    Gone,

    /// <summary>The folder can be read again.</summary>
    Back,

    /// <summary>More or fewer files than before are still being written.</summary>
    Waiting,
}
