namespace Lidoff.Evidence.Store;

/// <summary>The real disk.</summary>
public sealed class DiskFileLayer : IFileLayer
{
    private const int BufferBytes = 1 << 16;

    // errno.h of Linux: EWOULDBLOCK, what a lock that another holds answers.
    private const int WouldBlock = 11;
    private const int ReadTries = 400;
    private static readonly TimeSpan ReadPause = TimeSpan.FromMilliseconds(5);

    /// <inheritdoc/>
    public Stream CreateNew(string path) => new FileStream(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, BufferBytes);

    /// <inheritdoc/>
    public void Sync(Stream stream) => ((FileStream)stream).Flush(flushToDisk: true);

    /// <inheritdoc/>
    public void Rename(string from, string to) => File.Move(from, to, overwrite: true);

    /// <inheritdoc/>
    public void SyncFolder(string folder) => FolderSync.Run(folder);

    /// <inheritdoc/>
    public bool CreateFolder(string folder)
    {
        // A folder that is a link would let what is written leave the workspace.
        if (new DirectoryInfo(folder).LinkTarget is not null) throw new UnauthorizedAccessException($"{folder} is a link.");
        if (Directory.Exists(folder)) return false;
        Directory.CreateDirectory(folder);
        return true;
    }

    /// <inheritdoc/>
    public bool Exists(string path) => new FileInfo(path) is { Exists: true, LinkTarget: null, Directory.LinkTarget: null };

    /// <inheritdoc/>
    public Stream OpenRead(string path)
    {
        // A link could lead out of the workspace; nothing of ours is one.
        if (new FileInfo(path) is { LinkTarget: not null } or { Directory.LinkTarget: not null }) throw new UnauthorizedAccessException($"{path} is a link.");
        for (var tries = 1; ; tries++)
        {
            try
            {
                return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, BufferBytes, FileOptions.Asynchronous);
            }
            catch (IOException held) when (held.HResult == WouldBlock && tries < ReadTries)
            {
                // Somebody has this moment renamed the same content onto this name and still holds its writer's lock.
                Thread.Sleep(ReadPause);
            }
        }
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Files(string folder) =>
        Directory.Exists(folder) ? [.. Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal)] : [];

    /// <inheritdoc/>
    public IReadOnlyList<string> Folders(string folder) => Directory.Exists(folder)
        ? [.. new DirectoryInfo(folder).EnumerateDirectories().Where(each => each.LinkTarget is null).Select(each => each.Name).Order(StringComparer.Ordinal)]
        : [];

    /// <inheritdoc/>
    public void Delete(string path) => File.Delete(path);

    /// <inheritdoc/>
    public void DeleteAbandoned(string path)
    {
        try
        {
            // Opening without sharing takes the same advisory lock that a writer holds; the kernel lets go of a dead one's.
            using var probe = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            File.Delete(path);
        }
        catch (IOException)
        {
            // Somebody is writing it right now.
        }
    }
}
