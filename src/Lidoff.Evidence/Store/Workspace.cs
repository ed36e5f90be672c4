using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>
/// A workspace: a folder with <c>lidoff.db</c>, <c>files/</c> and <c>cache/</c>. Several processes may have it open. Closing it gives
/// everything back, so that a closed one can be copied.
/// </summary>
public sealed class Workspace : IDisposable
{
    private const string Database = "lidoff.db";

    private Workspace(string folder, IEntryStore store, FileVault files)
    {
        Folder = folder;
        Store = store;
        Files = files;
    }

    /// <summary>The folder, absolute.</summary>
    public string Folder { get; }

    /// <summary>The journal.</summary>
    public IEntryStore Store { get; }

    /// <summary>The files.</summary>
    public FileVault Files { get; }

    /// <summary>A folder for what can be computed again; it may be emptied at any time.</summary>
    public string CacheFolder => Path.Combine(Folder, "cache");

    /// <summary>True when there is a workspace in the folder.</summary>
    public static bool IsThere(string folder) => File.Exists(Path.Combine(folder, Database));

    /// <summary>
    /// Opens the workspace of a folder, making it when there is none. One of a newer program, or a database that is not ours, is
    /// refused and nothing is touched.
    /// </summary>
    /// <param name="folder">Absolute path.</param>
    /// <param name="writer">What makes this process itself.</param>
    /// <param name="clock">The injected clock.</param>
    /// <param name="disk">The disk; default the real one.</param>
    public static Outcome<Workspace> Open(string folder, WriterSeed writer, TimeProvider clock, IFileLayer? disk = null)
    {
        Guard.That(Path.IsPathFullyQualified(folder), "an absolute folder");
        Guard.NotNull(writer);
        var vault = Path.Combine(folder, "files");
        try
        {
            if (new DirectoryInfo(vault).LinkTarget is not null) return StoreSentences.FilesAreLink(vault);
            MakeForGood(folder);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return FileTrouble.Of(trouble, folder);
        }

        return SqliteEntryStore.Open(Path.Combine(folder, Database), writer, clock).Then(store =>
        {
            var files = new FileVault(disk ?? new DiskFileLayer(), vault, writer.Name);
            files.Sweep();
            var workspace = new Workspace(folder, store, files);
            // A crash may have come between an erasure and the removal of its files.
            if (store.FilesLeftByErasing() is { Ok: true } left && left.Value.Any(files.Has)) workspace.RemoveErasedFiles();
            return workspace;
        });
    }

    /// <summary>Makes a folder and those above it, and returns when their names have reached the disk: a workspace must outlive a power cut whole.</summary>
    private static void MakeForGood(string folder)
    {
        if (Directory.Exists(folder)) return;
        var parent = Path.GetDirectoryName(folder)!;
        MakeForGood(parent);
        Directory.CreateDirectory(folder);
        FolderSync.Run(parent);
    }

    /// <summary>
    /// Removes the files that only erased entries name, and first what was computed from them: whoever is killed in between finds the file
    /// still there at the next opening, and goes on. Other processes wait meanwhile, so none can name one anew.
    /// </summary>
    public Outcome<int> RemoveErasedFiles() => Store.Alone<int>(() => Store.FilesLeftByErasing().Then<int>(left =>
    {
        try
        {
            var there = left.Where(Files.Has).ToList();
            foreach (var hash in there)
            {
                Forget(hash);
                Files.Remove(hash);
                // Somebody may have looked at it until just now.
                Forget(hash);
            }

            return there.Count;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return FileTrouble.Of(trouble, Folder);
        }
    }));

    // What was computed from an erased file shows it all the same: thumbnails and tiles lie under its hash.
    private void Forget(string hash)
    {
        if (!Directory.Exists(CacheFolder)) return;
        foreach (var shelf in Directory.EnumerateDirectories(CacheFolder).Select(folder => Path.Combine(folder, hash[..2])).Where(Directory.Exists))
        {
            foreach (var made in Directory.EnumerateFiles(shelf, hash + "*")) File.Delete(made);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => Store.Dispose();
}
