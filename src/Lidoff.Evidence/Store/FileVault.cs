using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>
/// Files by the hash of their content, under <c>files/ab/cd…</c>. The order of steps is the whole point: write under a temporary
/// name, sync the file, rename, sync the folder; only then may an entry name it. A crash between any two leaves either no file
/// or a whole one. The same content is stored once. Names from outside never become paths.
/// </summary>
public sealed class FileVault
{
    /// <summary>Longest file taken in unless said otherwise, bytes (8 GiB).</summary>
    public const long UsualCap = 8L << 30;

    private const string TemporaryPrefix = "new-";
    private const int TemporaryTries = 3;
    private readonly IFileLayer disk;
    private readonly string folder;
    private readonly string writer;

    // Folders whose own name this process has seen reach the disk. That a folder is there proves nothing: whoever made it may
    // have failed or been killed before the sync.
    private readonly ConcurrentDictionary<string, bool> settled = new(StringComparer.Ordinal);
    private int count;

    internal FileVault(IFileLayer disk, string folder, string writer)
    {
        this.disk = disk;
        this.folder = folder;
        this.writer = writer;
    }

    /// <summary>Where a file of this hash lies, whether it is there or not. The hash has been checked by whoever read it.</summary>
    public string PathOf(string sha256)
    {
        Guard.That(EntryId.Fits(sha256), "a hash of 64 lower-case hex digits");
        return Path.Combine(folder, sha256[..2], sha256[2..]);
    }

    /// <summary>True when a file of this hash is there; its content is not looked at.</summary>
    public bool Has(string sha256) => EntryId.Fits(sha256) && disk.Exists(PathOf(sha256));

    /// <summary>
    /// Takes a stream in. When this returns a file, its content and its name have reached the disk. <paramref name="name"/> is what
    /// people call it, for sentences only.
    /// </summary>
    public Outcome<VaultFile> Take(Stream content, string name, long cap = UsualCap, CancellationToken stop = default)
    {
        Guard.NotNull(content);
        string? temporary = null;
        try
        {
            MakeFolder(folder);
            using var file = CreateTemporary(out temporary);
            var copied = Copy(content, file, name, cap, stop);
            if (!copied.TryValue(out var taken)) return Outcome<VaultFile>.Failed(copied.Faults);
            disk.Sync(file);
            var target = PathOf(taken.Sha256);
            MakeFolder(Path.GetDirectoryName(target)!);
            // Renaming over an equal file keeps the name whole at every instant. The stream stays open until then, so its lock
            // tells a sweeper that somebody lives.
            disk.Rename(temporary, target);
            temporary = null;
            file.Dispose();
            disk.SyncFolder(Path.GetDirectoryName(target)!);
            return taken;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return FileTrouble.Of(trouble, name);
        }
        finally
        {
            if (temporary is not null) Forget(temporary);
        }
    }

    /// <summary>
    /// Makes sure that a file which is here already stays here: another process may have given it its name and not synced it yet.
    /// Before an entry relies on a file that nobody took in just now, this has to succeed.
    /// </summary>
    internal Fault? Settle(string sha256)
    {
        try
        {
            var inner = Path.GetDirectoryName(PathOf(sha256))!;
            MakeFolder(folder);
            MakeFolder(inner);
            disk.SyncFolder(inner);
            return null;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return FileTrouble.Of(trouble, sha256);
        }
    }

    /// <summary>Opens a stored file for reading from any place; a fault when it is missing.</summary>
    public Outcome<Stream> Open(string sha256, string name)
    {
        if (!Has(sha256)) return StoreSentences.FileMissing(name);
        try
        {
            return disk.OpenRead(PathOf(sha256));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return FileTrouble.Of(trouble, name);
        }
    }

    /// <summary>Hash of what really lies under a name, or null when it cannot be read.</summary>
    internal string? HashOf(string path)
    {
        try
        {
            using var stream = disk.OpenRead(path);
            return Convert.ToHexStringLower(SHA256.HashData(stream));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>Every stored file's hash by its name, and paths that are no such file, both in ordinal order.</summary>
    internal (IReadOnlyList<string> Hashes, IReadOnlyList<string> Foreign) List()
    {
        var hashes = new List<string>();
        var foreign = new List<string>(disk.Files(folder).Where(path => !Path.GetFileName(path).StartsWith(TemporaryPrefix, StringComparison.Ordinal)));
        foreach (var first in disk.Folders(folder))
        {
            foreach (var path in disk.Files(Path.Combine(folder, first)))
            {
                var hash = first + Path.GetFileName(path);
                if (EntryId.Fits(hash) && first.Length == 2) hashes.Add(hash);
                else foreign.Add(path);
            }
        }

        return (hashes, foreign);
    }

    /// <summary>Removes a file whose last entry was erased.</summary>
    internal void Remove(string sha256)
    {
        disk.Delete(PathOf(sha256));
        disk.SyncFolder(Path.GetDirectoryName(PathOf(sha256))!);
    }

    /// <summary>Clears away what writers that died have left; what a living one writes stays.</summary>
    internal void Sweep()
    {
        foreach (var path in disk.Files(folder).Where(path => Path.GetFileName(path).StartsWith(TemporaryPrefix, StringComparison.Ordinal)))
        {
            try
            {
                disk.DeleteAbandoned(path);
            }
            catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
            {
                // It is in nobody's way; the next opening tries again.
            }
        }
    }

    /// <summary>
    /// Makes a temporary file. Between a file's making and its locking a sweeper of another process may take it for abandoned;
    /// then the next name is tried.
    /// </summary>
    private Stream CreateTemporary(out string path)
    {
        for (var tries = 1; ; tries++)
        {
            path = Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"{TemporaryPrefix}{writer}-{Interlocked.Increment(ref count)}"));
            try
            {
                var file = disk.CreateNew(path);
                if (disk.Exists(path) || tries == TemporaryTries) return file;
                file.Dispose();
            }
            catch (IOException) when (tries < TemporaryTries && disk.Exists(path))
            {
                // The sweeper held it; it clears it away itself.
            }
        }
    }

    private static Outcome<VaultFile> Copy(Stream content, Stream file, string name, long cap, CancellationToken stop)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        var buffer = new byte[1 << 17];
        long bytes = 0;
        for (int read; (read = content.Read(buffer)) > 0;)
        {
            stop.ThrowIfCancellationRequested();
            bytes += read;
            if (bytes > cap) return StoreSentences.FileTooLarge(name, cap);
            hash.AppendData(buffer, 0, read);
            file.Write(buffer, 0, read);
        }

        return new VaultFile(Convert.ToHexStringLower(hash.GetHashAndReset()), bytes);
    }

    /// <summary>A folder's own name must reach the disk too, or the files in it are lost with it.</summary>
    private void MakeFolder(string path)
    {
        if (!disk.CreateFolder(path) && settled.ContainsKey(path)) return;
        settled.TryRemove(path, out _);
        disk.SyncFolder(Path.GetDirectoryName(path)!);
        settled[path] = true;
    }

    private void Forget(string temporary)
    {
        try
        {
            disk.Delete(temporary);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // The next opening sweeps it.
        }
    }
}
