using System.Globalization;
using Lidoff.Bench.Rooms.See.Video;
using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See;

/// <summary>What the room See shows: every file of the dossier, pictures with their scale, tags and how much was pointed at in them.</summary>
/// <param name="Pictures">In the order in which they came.</param>
/// <param name="Zooms">The zoom tags used last, newest first; hostile text, like the lights.</param>
/// <param name="Lights">The lights used last, newest first.</param>
/// <param name="Spots">Every designator of the dossier.</param>
/// <param name="NextBurst">The first free name of a burst.</param>
public sealed record SeeView(ValueList<PictureRow> Pictures, ValueList<string> Zooms, ValueList<string> Lights, ValueList<string> Spots, string NextBurst)
{
    // As many as there are keys for.
    private const int Remembered = 3;

    /// <summary>An empty room.</summary>
    public static SeeView Empty { get; } = new([], [], [], [], "B1");

    /// <summary>The room as the dossier stands.</summary>
    public static SeeView Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        var tags = view.Live<PictureSighting>().Select(each => each.Value).Reverse().ToList();
        var bursts = view.Live<BurstSighting>().Select(each => each.Value.Burst).ToHashSet(StringComparer.Ordinal);
        ValueList<string> Last(Func<PictureSighting, string> tag) => [.. tags.Select(tag).Where(each => each.Length > 0).Distinct(StringComparer.Ordinal).Take(Remembered)];
        return new(
            [.. Rows(dossier)], Last(each => each.Zoom), Last(each => each.Light), [.. SpotNames.Of(view)],
            Enumerable.Range(1, bursts.Count + 1).Select(number => "B" + number.ToString(CultureInfo.InvariantCulture)).First(name => !bursts.Contains(name)));
    }

    private static IEnumerable<PictureRow> Rows(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        string? Hash(string reference) => reference.Length > 0 && dossier.Model.Picture(reference) is { Found: true } found ? found.Sha256 : null;
        var spots = view.Live<SpotSighting>().Where(spot => spot.Value.Middle is not null).ToLookup(spot => Hash(spot.Value.Picture), StringComparer.Ordinal);
        var tags = view.Live<PictureSighting>().ToLookup(each => Hash(each.Value.File), PictureTags.Of, StringComparer.Ordinal);
        var bursts = view.Live<BurstSighting>().SelectMany(each => each.Value.Frames.Select((frame, i) => (Frame: frame, Burst: new BurstFrame(each.Value.Burst, i, each.Value.Frames.Count))))
            .DistinctBy(each => each.Frame, StringComparer.Ordinal).ToDictionary(each => each.Frame, each => each.Burst, StringComparer.Ordinal);
        foreach (var file in view.Live<FileAdded>().Select(sighting => sighting.Value).DistinctBy(file => file.Sha256, StringComparer.Ordinal))
        {
            if (!file.Type.StartsWith("image/", StringComparison.Ordinal))
            {
                yield return new(file.Name, file.Sha256, file.Bytes == 0 ? "empty: 0 bytes came" : file.Type.Length > 0 ? file.Type : "not recognised", file.Bytes, null, null, Video: VideoFiles.Is(file.Type) ? VideoFiles.Says(dossier, file.Sha256) : "");
                continue;
            }

            var said = tags[file.Sha256].LastOrDefault() ?? PictureTags.None;
            var header = dossier.Picture(file.Sha256, file.Name);
            yield return header.TryValue(out var found)
                ? new(file.Name, file.Sha256, found.Kind.Says, file.Bytes, found.Width, found.Height, PictureScaleText.Of(dossier, file.Sha256, found.Frame), "", spots[file.Sha256].Count(), said.Side, said.Zoom, said.Light, Burst: bursts.GetValueOrDefault(file.Sha256))
                : new(file.Name, file.Sha256, file.Type, file.Bytes, null, null, "", header.Faults[0].Say);
        }
    }
}
