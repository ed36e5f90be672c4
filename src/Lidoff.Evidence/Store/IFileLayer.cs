namespace Lidoff.Evidence.Store;

/// <summary>
/// The few things the vault asks of a disk, one call a step, so that a test can let the power fail between any two of them.
/// Failures are <see cref="IOException"/> and <see cref="UnauthorizedAccessException"/>, as the base library throws them.
/// </summary>
public interface IFileLayer
{
    /// <summary>Makes a new file and keeps it locked against <see cref="DeleteAbandoned"/> while the stream is open.</summary>
    Stream CreateNew(string path);

    /// <summary>Returns when the stream's bytes have reached the disk.</summary>
    void Sync(Stream stream);

    /// <summary>Gives a file another name in one step; a file of that name is replaced.</summary>
    void Rename(string from, string to);

    /// <summary>Returns when the names in a folder have reached the disk.</summary>
    void SyncFolder(string folder);

    /// <summary>Makes a folder where there is none. Returns whether it was made.</summary>
    bool CreateFolder(string folder);

    /// <summary>True when a plain file (no link) is there.</summary>
    bool Exists(string path);

    /// <summary>Opens a plain file for reading from any place.</summary>
    Stream OpenRead(string path);

    /// <summary>Paths of the files right in a folder, in ordinal order; none when the folder is not there.</summary>
    IReadOnlyList<string> Files(string folder);

    /// <summary>Names of the folders right in a folder, in ordinal order; links are left out.</summary>
    IReadOnlyList<string> Folders(string folder);

    /// <summary>Removes a file that may be there.</summary>
    void Delete(string path);

    /// <summary>Removes a file nobody writes to any more; leaves it where a living process still holds it.</summary>
    void DeleteAbandoned(string path);
}
