using System.Globalization;
using System.Security.Cryptography;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Showing;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Data;

/// <summary>
/// A workspace as the bench's pages see it. Each dossier is opened once and kept up with the journal, so a page costs what changed
/// since the last one. One page is made at a time.
/// </summary>
public sealed class WorkspaceBench(Workspace workspace, Lazy<Ranker> ranker) : IBenchData, IDisposable
{
    private static readonly HashSet<string> PictureEndings = new([".jpg", ".jpeg", ".png", ".tif", ".tiff", ".bmp", ".gif", ".webp", ".heic"], StringComparer.OrdinalIgnoreCase);

    private readonly Lock gate = new();
    private Task? warming;
    private readonly Dictionary<string, OpenDossier> open = new(StringComparer.Ordinal);
    private readonly FileRecognisers recognisers = FileRecognisers.Found();

    /// <inheritdoc/>
    public bool Idle
    {
        get
        {
            if (!gate.TryEnter()) return false;
            gate.Exit();
            return true;
        }
    }

    /// <inheritdoc/>
    public string Heads()
    {
        var dossiers = workspace.Store.Dossiers();
        if (!dossiers.Ok) throw new IOException(dossiers.Faults[0].Say);
        return string.Join(';', dossiers.Value.Select(name => name + string.Join(',', workspace.Store.Heads(name) is { Ok: true } heads ? heads.Value.Select(id => id.Hex) : [])));
    }

    /// <inheritdoc/>
    public IReadOnlyList<DossierRow> Dossiers()
    {
        var names = workspace.Store.Dossiers();
        if (!names.Ok) throw new IOException(names.Faults[0].Say);
        lock (gate)
        {
            return [.. names.Value.Select(name => Fresh(name)).OfType<OpenDossier>().Select(Row)];
        }
    }

    /// <inheritdoc/>
    public T? View<T>(string dossier, Func<OpenDossier, T> look)
        where T : class
    {
        lock (gate) return Fresh(dossier) is { } found ? look(found) : null;
    }

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<StoredEntry>> Begin(string dossier, string title)
    {
        lock (gate) return DossierSession.Begin(workspace, dossier, title);
    }

    /// <inheritdoc/>
    public Outcome<IReadOnlyList<StoredEntry>> Note(string dossier, ReadOnlyMemory<byte> lines)
    {
        lock (gate)
        {
            if (Fresh(dossier) is not { } into) return StoreSentences.NoDossier(dossier, []);
            var batch = new NoteReader(DossierKinds.All, prefix => workspace.Store.Find(dossier, prefix)).Read(dossier, lines);
            var faults = batch.Lines.SelectMany(line => line.Faults).ToList();
            if (faults.Count > 0) return Outcome<IReadOnlyList<StoredEntry>>.Failed(faults);
            var stored = into.Append(batch.Drafts);
            if (stored.TryValue(out var entries) && entries.Any(entry => entry.Entry.Kind == ControlKinds.Erase)) workspace.RemoveErasedFiles();
            return stored;
        }
    }

    /// <inheritdoc/>
    public StoredFile? File(string sha256)
    {
        if (!workspace.Files.Has(sha256)) return null;
        lock (gate)
        {
            foreach (var file in open.Values.SelectMany(dossier => dossier.Session.View.Live<FileAdded>()).Select(sighting => sighting.Value))
            {
                if (file.Sha256 == sha256) return new(() => workspace.Files.Open(sha256, file.Name).Value, file.Type.Length > 0 ? file.Type : "application/octet-stream", file.Name);
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public async Task<Outcome<AddedFile>> Add(string dossier, string fileName, Stream body, string from, CancellationToken stop)
    {
        // A request's stream is read without blocking; the vault takes it from a temporary file that vanishes with its handle.
        var opened = Spool();
        if (!opened.TryValue(out var spool)) return Outcome<AddedFile>.Failed(opened.Faults);
        await using var closing = spool.ConfigureAwait(false);
        var buffer = new byte[1 << 16];
        while (await body.ReadAsync(buffer, stop).ConfigureAwait(false) is > 0 and var read)
        {
            try
            {
                await spool.WriteAsync(buffer.AsMemory(0, read), stop).ConfigureAwait(false);
            }
            catch (IOException trouble)
            {
                return FileTrouble.Of(trouble, workspace.Folder);
            }
        }

        spool.Position = 0;
        var hash = Convert.ToHexStringLower(await SHA256.HashDataAsync(spool, stop).ConfigureAwait(false));
        spool.Position = 0;
        Outcome<AddedFile> added;
        lock (gate)
        {
            if (Fresh(dossier) is not { } into) return StoreSentences.NoDossier(dossier, []);
            // The same bytes again say nothing new, whatever they are called: a page would show nothing of them.
            if (into.Session.View.Live<FileAdded>().FirstOrDefault(file => file.Value.Sha256 == hash) is { } known)
            {
                return new AddedFile(hash, KindOf(known.Value), known.Id.Hex, "", BenchSentences.Already(fileName, known.Value.Name));
            }

            var taken = FileTaking.Take(workspace, into.Session, spool, fileName, from, recognisers, stop: stop);
            into.Refresh();
            added = taken.Then(pair => new AddedFile(pair.Fact.Sha256, KindOf(pair.Fact), pair.Stored.Id.Hex));
        }

        // Now is when it can still be copied again: every pixel is looked at once, while other pages go on.
        if (!added.TryValue(out var file)) return added;
        if (!file.Kind.StartsWith("image/", StringComparison.Ordinal)) return PictureEndings.Contains(Path.GetExtension(fileName)) ? file with { Trouble = BenchSentences.NotAPicture(fileName, file.Kind) } : file;
        var whole = await Task.Run(() => PictureFile.Check(workspace.Files.PathOf(file.Sha256), fileName), stop).ConfigureAwait(false);
        return whole.Ok ? added : file with { Trouble = whole.Faults[0].Say };
    }

    /// <summary>Waits for what it began by itself, so that nothing is written to the workspace's folder once it is let go.</summary>
    public void Dispose()
    {
        Task? last;
        lock (gate) last = warming;
        try
        {
            last?.Wait();
        }
        catch (AggregateException)
        {
            // A catalogue that cannot be read is said where a name is asked for.
        }
    }

    // Without a buffer of its own: a full disk is met where it is written to, not once more where it is closed.
    private Outcome<FileStream> Spool()
    {
        try
        {
            Directory.CreateDirectory(workspace.CacheFolder);
            return new FileStream(Path.Combine(workspace.CacheFolder, "incoming-" + Path.GetRandomFileName()), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 0, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return FileTrouble.Of(trouble, workspace.Folder);
        }
    }

    private OpenDossier? Fresh(string name)
    {
        if (open.TryGetValue(name, out var known))
        {
            known.Refresh();
            return known;
        }

        var opened = OpenDossier.Open(workspace, name, ranker);
        if (!opened.TryValue(out var dossier)) return null;

        // Made beside, so that the first spot does not wait for the catalogue.
        if (!ranker.IsValueCreated) warming ??= Task.Run(() => ranker.Value);
        return open[name] = dossier;
    }

    private static string KindOf(FileAdded file) => file.Type.Length > 0 ? file.Type : "not recognised, kept as it is";

    private static DossierRow Row(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        var pictures = view.Live<FileAdded>().Where(file => file.Value.Type.StartsWith("image/", StringComparison.Ordinal)).DistinctBy(file => file.Value.Sha256).Count();
        return new(dossier.Session.Name, DossierOverview.TitleOf(view), pictures, SpotNames.Of(view).Count, view.Entries.Count);
    }
}
