using System.Collections.Concurrent;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Advising;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Data;

/// <summary>What pictures are worth, each looked at once while the workbench runs: its pixels never change under its hash. Looking takes a seat.</summary>
public sealed class PictureWorths(PictureSeats seats)
{
    private static readonly string[] Seen = [WarningCodes.Tilt, WarningCodes.Lens, WarningCodes.Mirrored, WarningCodes.UnequalAxes];

    private readonly ConcurrentDictionary<string, Lazy<Task<PictureWorth?>>> found = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<Task<PictureLook?>>> looks = new(StringComparer.Ordinal);

    /// <summary>What a picture of a dossier is worth; null where it is none of its pictures, or cannot be decoded just now.</summary>
    public async Task<PictureWorth?> Of(IBenchData data, string dossier, string sha256) => await Task.Run(() => Find(data, dossier, sha256)).ConfigureAwait(false) is { } file
        ? await Once(found, sha256, file, () => PictureWorth.Of(file.Path, file.Name, file.Header).TryValue(out var worth) ? worth : null).ConfigureAwait(false)
        : null;

    /// <summary>
    /// What the picture's own edges and words say against lengths by its known lengths: that the camera leaned, the lens bends, the
    /// picture is flipped. Only what the known lengths alone do not tell; empty where it has none.
    /// </summary>
    public async Task<IReadOnlyList<string>> Warnings(IBenchData data, string dossier, string sha256)
    {
        if (await Task.Run(() => Find(data, dossier, sha256)).ConfigureAwait(false) is not { References.Count: > 0 } file) return [];
        if (await Once(looks, sha256, file, () => PictureLook.At(file.Path, file.Name, file.Header).TryValue(out var look) ? look.Kept() : null).ConfigureAwait(false) is not { } seen) return [];
        return await Task.Run(() => (string[])[.. Run(file, seen).Except(Run(file, null), StringComparer.Ordinal)]).ConfigureAwait(false);
    }

    // A look that failed is forgotten: its file may have been locked, the disk away or the memory short, and next time is another.
    private async Task<T?> Once<T>(ConcurrentDictionary<string, Lazy<Task<T?>>> kept, string sha256, Found file, Func<T?> look)
        where T : class
    {
        var asked = kept.GetOrAdd(sha256, _ => new(() => seats.Take(PictureSeats.IsLarge(file.Header), look, CancellationToken.None)));
        T? seen = null;
        try
        {
            return seen = await asked.Value.ConfigureAwait(false);
        }
        finally
        {
            if (seen is null) kept.TryRemove(new(sha256, asked));
        }
    }

    // Of the lengths that were clicked, and of three across and three down the picture, of each sort the first.
    private static IEnumerable<string> Run(Found file, PictureLook? look)
    {
        var (width, height) = (file.Header.Width, file.Header.Height);
        (PicturePoint From, PicturePoint To)[] lengths =
        [
            .. file.Lengths,
            .. new[] { 0.2, 0.5, 0.8 }.SelectMany(at => new (PicturePoint, PicturePoint)[]
            {
                (new(width * 0.2, height * at), new(width * 0.8, height * at)),
                (new(width * at, height * 0.2), new(width * at, height * 0.8)),
            }),
        ];
        var job = new MeasureJob { Image = file.Name, References = [.. file.References], Targets = [.. lengths.Select(each => new AskedTarget("length", new TargetLength("length", each.From, each.To)))] };
        if (!Measurement.Run(job, file.Header.Frame, look).TryValue(out var targets)) return [];
        return targets.Where(target => target.Length.Ok).SelectMany(target => target.Length.Value.Warnings).Where(warning => Seen.Contains(warning.Code)).DistinctBy(warning => warning.Code).Select(warning => warning.Say);
    }

    private static Found? Find(IBenchData data, string dossier, string sha256) => Guard.NotNull(data).View(dossier, open => new Answer(Look(open, sha256)))?.Found;

    private static Found? Look(OpenDossier open, string sha256)
    {
        if (open.Session.View.Live<FileAdded>().FirstOrDefault(each => each.Value.Sha256 == sha256) is not { } added || !open.Picture(sha256, added.Value.Name).TryValue(out var header)) return null;
        var lengths = open.Session.View.Live<Lidoff.Seeing.Kinds.LengthSighting>().Select(each => each.Value.InPicture).Where(clicked => clicked is not null && open.Model.Picture(clicked.Picture) is { Found: true } picture && picture.Sha256 == sha256);
        return new(open.Workspace.Files.PathOf(sha256), added.Value.Name, header, [.. open.Model.Scale(sha256).References.Select(each => each.Value.Reference)], [.. lengths.Select(clicked => (clicked!.From, clicked.To))]);
    }

    private sealed record Answer(Found? Found);

    private sealed record Found(string Path, string Name, PictureHeader Header, IReadOnlyList<ReferenceLength> References, IReadOnlyList<(PicturePoint From, PicturePoint To)> Lengths);
}
