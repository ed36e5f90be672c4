using System.Collections.Concurrent;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Advising;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Data;

/// <summary>What pictures are worth, each looked at once while the workbench runs: its pixels never change under its hash.</summary>
public sealed class PictureWorths
{
    private static readonly string[] Seen = [WarningCodes.Tilt, WarningCodes.Lens, WarningCodes.Mirrored, WarningCodes.UnequalAxes];

    private readonly ConcurrentDictionary<string, Lazy<PictureWorth?>> found = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, Lazy<PictureLook?>> looks = new(StringComparer.Ordinal);

    /// <summary>What a picture of a dossier is worth; null where it is none of its pictures, or cannot be decoded.</summary>
    public PictureWorth? Of(IBenchData data, string dossier, string sha256) => Find(data, dossier, sha256) is { } file
        ? found.GetOrAdd(sha256, _ => new(() => PictureWorth.Of(file.Path, file.Name, file.Header).TryValue(out var worth) ? worth : null)).Value
        : null;

    /// <summary>
    /// What the picture's own edges and words say against lengths by its known lengths: that the camera leaned, the lens bends, the
    /// picture is flipped. Only what the known lengths alone do not tell; empty where it has none.
    /// </summary>
    public IReadOnlyList<string> Warnings(IBenchData data, string dossier, string sha256)
    {
        if (Find(data, dossier, sha256) is not { References.Count: > 0 } file) return [];
        if (looks.GetOrAdd(sha256, _ => new(() => PictureLook.At(file.Path, file.Name, file.Header).TryValue(out var look) ? look.Kept() : null)).Value is not { } seen) return [];
        var told = Run(file, null);
        return [.. Run(file, seen).Except(told, StringComparer.Ordinal)];
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
