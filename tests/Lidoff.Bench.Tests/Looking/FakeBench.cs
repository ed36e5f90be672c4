using System.Collections.Concurrent;
using System.Security.Cryptography;
using System.Text;
using Lidoff.Bench.Data;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;
using Lidoff.Naming.Ranking;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Dossiers;
using Lidoff.TestSupport;

namespace Lidoff.Bench.Tests.Looking;

/// <summary>A bench over a real workspace in a temporary folder, which can be told to break or to refuse.</summary>
public sealed class FakeBench : IBenchData, IDisposable
{
    /// <summary>The naming engine over the facts the program ships; made once for all tests, which import nothing.</summary>
    private static readonly Lazy<Ranker> Ranker = new(() =>
    {
        using var own = new TempFolder();
        using var workspace = Workspace.Open(own.Path, new WriterSeed(Enumerable.Repeat((byte)8, 32).ToArray()), TimeProvider.System).Value;
        return OpenDossier.Ranker(Path.Combine(Root(), "data", "catalogue"), workspace).Value;
    });

    private readonly FileRecognisers recognisers = FileRecognisers.Found();
    private readonly ConcurrentDictionary<string, StoredFile> files = new(StringComparer.Ordinal);
    private readonly TempFolder folder = new();
    private readonly WorkspaceBench inner;

    public FakeBench()
    {
        Workspace = Workspace.Open(folder.Path, new WriterSeed(Enumerable.Repeat((byte)7, 32).ToArray()), TimeProvider.System).Value;
        inner = new(Workspace, Ranker);
    }

    public Workspace Workspace { get; }

    public string? Breaks { get; set; }

    public Fault? Refuses { get; set; }

    /// <summary>Called before lines are stored, on the storing thread: a slow disk.</summary>
    public Action? BeforeNote { get; set; }

    public List<(string Dossier, string FileName, byte[] Bytes, string From)> Added { get; } = [];

    public bool Idle => inner.Idle;

    public string Heads() => Breaks is null ? inner.Heads() : throw new IOException(Breaks);

    public IReadOnlyList<DossierRow> Dossiers() => inner.Dossiers();

    public T? View<T>(string dossier, Func<OpenDossier, T> look)
        where T : class => Breaks is null ? inner.View(dossier, look) : throw new InvalidOperationException(Breaks);

    public Outcome<IReadOnlyList<StoredEntry>> Begin(string dossier, string title) => inner.Begin(dossier, title);

    public Outcome<IReadOnlyList<StoredEntry>> Note(string dossier, ReadOnlyMemory<byte> lines)
    {
        BeforeNote?.Invoke();
        return inner.Note(dossier, lines);
    }

    public StoredFile? File(string sha256) => files.TryGetValue(sha256, out var found) ? found : inner.File(sha256);

    public async Task<Outcome<AddedFile>> Add(string dossier, string fileName, Stream body, string from, CancellationToken stop)
    {
        using var all = new MemoryStream();
        await body.CopyToAsync(all, stop);
        if (Refuses is { } fault) return fault;
        all.Position = 0;
        var added = await inner.Add(dossier, fileName, all, from, stop);
        // One that was stopped on the way was not added, and comes again.
        Added.Add((dossier, fileName, all.ToArray(), from));
        return added;
    }

    /// <summary>Begins a dossier and notes lines in it; every one must be good.</summary>
    public void Set(string dossier, string title, params string[] lines)
    {
        if (inner.View(dossier, d => d) is null) Assert.True(inner.Begin(dossier, title).Ok);
        if (lines.Length > 0) Assert.Empty(inner.Note(dossier, Encoding.UTF8.GetBytes(string.Join('\n', lines))).Faults.Select(f => f.Say));
    }

    /// <summary>Serves a file that no dossier has and hands back its hash.</summary>
    public string Keep(byte[] bytes, string name)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        var kind = recognisers.Recognise(FileHead.Of(bytes, name));
        files[hash] = new(() => new MemoryStream(bytes, writable: false), kind.MediaType, name);
        return hash;
    }

    public void Dispose()
    {
        Workspace.Dispose();
        folder.Dispose();
    }

    private static string Root()
    {
        var at = AppContext.BaseDirectory;
        while (!System.IO.File.Exists(Path.Combine(at, "Lidoff.slnx"))) at = Path.GetDirectoryName(at)!;
        return at;
    }
}
