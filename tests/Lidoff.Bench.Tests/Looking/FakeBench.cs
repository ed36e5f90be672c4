using System.Collections.Concurrent;
using System.Security.Cryptography;
using Lidoff.Bench.Data;
using Lidoff.Evidence.Registering;
using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Tests.Looking;

/// <summary>A bench in memory whose dossiers and files a test sets as it likes.</summary>
public sealed class FakeBench : IBenchData
{
    private readonly FileRecognisers recognisers = FileRecognisers.Found();
    private readonly ConcurrentDictionary<string, (byte[] Bytes, StoredFile File)> files = new(StringComparer.Ordinal);
    private int moves;

    public ConcurrentDictionary<string, DossierPageModel> Pages { get; } = new(StringComparer.Ordinal);

    public string? Breaks { get; set; }

    public Fault? Refuses { get; set; }

    public List<(string Dossier, string FileName, byte[] Bytes)> Added { get; } = [];

    public string Heads() => Breaks is null ? moves.ToString(System.Globalization.CultureInfo.InvariantCulture) : throw new IOException(Breaks);

    public IReadOnlyList<DossierRow> Dossiers() =>
        [.. Pages.Values.OrderBy(p => p.Name, StringComparer.Ordinal).Select(p => new DossierRow(p.Name, p.Title, p.Pictures.Count, p.Spots.Count, p.Entries))];

    public DossierPageModel? Dossier(string name) => Breaks is null ? Pages.GetValueOrDefault(name) : throw new InvalidOperationException(Breaks);

    public StoredFile? File(string sha256) => files.TryGetValue(sha256, out var found) ? found.File : null;

    public async Task<Outcome<AddedFile>> Add(string dossier, string fileName, Stream body, CancellationToken stop)
    {
        using var all = new MemoryStream();
        await body.CopyToAsync(all, stop);
        if (Refuses is { } fault) return fault;
        Added.Add((dossier, fileName, all.ToArray()));
        var hash = Keep(all.ToArray(), fileName);
        return new AddedFile(hash, File(hash)!.MediaType, new string('e', 64));
    }

    public void Set(DossierPageModel page)
    {
        Pages[page.Name] = page;
        Interlocked.Increment(ref moves);
    }

    /// <summary>Stores a file and hands back its hash.</summary>
    public string Keep(byte[] bytes, string name)
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData(bytes));
        var kind = recognisers.Recognise(FileHead.Of(bytes, name));
        files[hash] = (bytes, new(() => new MemoryStream(bytes, writable: false), kind.MediaType, name));
        return hash;
    }
}
