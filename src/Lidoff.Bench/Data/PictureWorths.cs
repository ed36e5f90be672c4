using System.Collections.Concurrent;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Advising;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Data;

/// <summary>What pictures are worth, each looked at once while the workbench runs: its pixels never change under its hash. Looking takes a seat.</summary>
public sealed class PictureWorths(PictureSeats seats)
{
    private readonly ConcurrentDictionary<string, Lazy<Task<PictureWorth?>>> found = new(StringComparer.Ordinal);

    /// <summary>What a picture of a dossier is worth; null where it is none of its pictures, or cannot be decoded just now.</summary>
    public async Task<PictureWorth?> Of(IBenchData data, string dossier, string sha256)
    {
        if (await Task.Run(() => Find(data, dossier, sha256)).ConfigureAwait(false) is not { } file) return null;
        var asked = found.GetOrAdd(sha256, _ => new(() => seats.Take(
            PictureSeats.IsLarge(file.Header), () => PictureWorth.Of(file.Path, file.Name, file.Header).TryValue(out var worth) ? worth : null, CancellationToken.None)));
        PictureWorth? seen = null;
        try
        {
            return seen = await asked.Value.ConfigureAwait(false);
        }
        finally
        {
            // A look that failed is forgotten: its file may have been locked, the disk away or the memory short, and next time is another.
            if (seen is null) found.TryRemove(new(sha256, asked));
        }
    }

    private static Found? Find(IBenchData data, string dossier, string sha256) => Guard.NotNull(data).View(dossier, open => new Answer(Look(open, sha256)))?.Found;

    private static Found? Look(OpenDossier open, string sha256) =>
        open.Session.View.Live<FileAdded>().FirstOrDefault(each => each.Value.Sha256 == sha256) is { } added && open.Picture(sha256, added.Value.Name).TryValue(out var header)
            ? new(open.Workspace.Files.PathOf(sha256), added.Value.Name, header)
            : null;

    private sealed record Answer(Found? Found);

    private sealed record Found(string Path, string Name, PictureHeader Header);
}
