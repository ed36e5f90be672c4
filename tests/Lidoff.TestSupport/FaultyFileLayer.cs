using Lidoff.Evidence.Store;

namespace Lidoff.TestSupport;

/// <summary>
/// A disk in memory that keeps apart what was written and what was synced. It can fail at any step, let the power go at any
/// step, and hand over the disk that is found afterwards. Not for several threads.
/// </summary>
public sealed class FaultyFileLayer : IFileLayer
{
    private readonly Dictionary<string, Content> names = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Content> syncedNames = new(StringComparer.Ordinal);
    private readonly HashSet<string> folders = new(StringComparer.Ordinal);
    private readonly HashSet<string> syncedFolders = new(StringComparer.Ordinal);
    private readonly HashSet<Content> open = [];
    private int left = int.MaxValue;
    private Func<Exception>? failure;
    private bool shortWrite;
    private bool cutting;
    private bool dead;

    /// <summary>A file's bytes as written and as synced.</summary>
    private sealed class Content
    {
        public MemoryStream Written { get; } = new();

        public byte[] Synced { get; set; } = [];
    }

    /// <summary>Every step so far that changes or checks something, as <c>verb name</c>.</summary>
    public List<string> Log { get; } = [];

    /// <summary>Throws <paramref name="make"/>'s exception at the step after <paramref name="steps"/> more, once; a power cut stays.</summary>
    /// <param name="steps">How many steps still work.</param>
    /// <param name="make">Makes the exception.</param>
    /// <param name="afterHalfAWrite">True when a write that fails has written half of its bytes.</param>
    public void FailAfter(int steps, Func<Exception> make, bool afterHalfAWrite = false)
    {
        left = steps;
        failure = make;
        cutting = make() is PowerCutException;
        shortWrite = afterHalfAWrite;
    }

    /// <summary>The disk that is found when the power is back.</summary>
    public FaultyFileLayer Restarted(AfterCut how)
    {
        dead = true;
        var found = new FaultyFileLayer();
        foreach (var folder in how == AfterCut.UnsyncedGone ? syncedFolders : folders)
        {
            found.folders.Add(folder);
            found.syncedFolders.Add(folder);
        }

        foreach (var (path, content) in how == AfterCut.UnsyncedGone ? syncedNames : names)
        {
            if (!found.folders.Contains(Path.GetDirectoryName(path)!)) continue;
            var kept = new Content { Synced = content.Synced };
            kept.Written.Write(content.Synced);
            found.names.Add(path, kept);
            found.syncedNames.Add(path, kept);
        }

        return found;
    }

    /// <inheritdoc/>
    public Stream CreateNew(string path)
    {
        Step("create", path);
        if (!folders.Contains(Path.GetDirectoryName(path)!)) throw new DirectoryNotFoundException(path);
        var content = new Content();
        if (!names.TryAdd(path, content)) throw new IOException($"{path} is there already.");
        open.Add(content);
        return new Writing(this, content, path);
    }

    /// <inheritdoc/>
    public void Sync(Stream stream)
    {
        var writing = (Writing)stream;
        Step("sync", writing.Path);
        writing.Content.Synced = writing.Content.Written.ToArray();
    }

    /// <inheritdoc/>
    public void Rename(string from, string to)
    {
        Step("rename", to);
        if (!names.Remove(from, out var content)) throw new FileNotFoundException(from);
        if (!folders.Contains(Path.GetDirectoryName(to)!)) throw new DirectoryNotFoundException(to);
        names[to] = content;
    }

    /// <inheritdoc/>
    public void SyncFolder(string folder)
    {
        Step("sync folder", folder);
        foreach (var path in syncedNames.Keys.Where(p => Path.GetDirectoryName(p) == folder).ToList()) syncedNames.Remove(path);
        foreach (var (path, content) in names.Where(n => Path.GetDirectoryName(n.Key) == folder)) syncedNames[path] = content;
        foreach (var inner in folders.Where(f => Path.GetDirectoryName(f) == folder)) syncedFolders.Add(inner);
    }

    /// <inheritdoc/>
    public bool CreateFolder(string folder)
    {
        Step("folder", folder);
        return folders.Add(folder);
    }

    /// <inheritdoc/>
    public bool Exists(string path)
    {
        // Asking whether a file is there never fails on a real disk: a failure reads as no.
        if (cutting || dead) Step("look", path);
        else Log.Add("look " + Path.GetFileName(path));
        return names.ContainsKey(path);
    }

    /// <inheritdoc/>
    public Stream OpenRead(string path)
    {
        Step("read", path);
        return names.TryGetValue(path, out var content) ? new MemoryStream(content.Written.ToArray(), writable: false) : throw new FileNotFoundException(path);
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Files(string folder) => [.. names.Keys.Where(p => Path.GetDirectoryName(p) == folder).Order(StringComparer.Ordinal)];

    /// <inheritdoc/>
    public IReadOnlyList<string> Folders(string folder) =>
        [.. folders.Where(f => Path.GetDirectoryName(f) == folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    /// <inheritdoc/>
    public void Delete(string path)
    {
        Step("delete", path);
        names.Remove(path);
    }

    /// <inheritdoc/>
    public void DeleteAbandoned(string path)
    {
        if (names.TryGetValue(path, out var content) && !open.Contains(content)) Delete(path);
    }

    private void Step(string verb, string path, Action? half = null)
    {
        if (dead) throw new PowerCutException();
        Log.Add(verb + " " + Path.GetFileName(path));
        if (left-- > 0) return;
        var exception = failure!();
        left = int.MaxValue;
        if (exception is PowerCutException) dead = true;
        if (shortWrite) half?.Invoke();
        throw exception;
    }

    private sealed class Writing(FaultyFileLayer disk, Content content, string path) : Stream
    {
        public Content Content => content;

        public string Path => path;

        public override bool CanRead => false;

        public override bool CanSeek => false;

        public override bool CanWrite => true;

        public override long Length => content.Written.Length;

        public override long Position
        {
            get => content.Written.Position;
            set => throw new NotSupportedException();
        }

        public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

        public override void Write(ReadOnlySpan<byte> buffer)
        {
            var bytes = buffer.ToArray();
            disk.Step("write", path, () => content.Written.Write(bytes.AsSpan(0, bytes.Length / 2)));
            content.Written.Write(bytes);
        }

        public override void Flush()
        {
            // Flushing hands bytes to the system, not to the disk.
        }

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        protected override void Dispose(bool disposing)
        {
            disk.open.Remove(content);
            base.Dispose(disposing);
        }
    }
}
