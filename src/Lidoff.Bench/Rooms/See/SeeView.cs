using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See;

/// <summary>What the room See shows: every file of the dossier, pictures with their scale, tags and how much was pointed at in them.</summary>
/// <param name="Pictures">In the order in which they came.</param>
public sealed record SeeView(ValueList<PictureRow> Pictures)
{
    /// <summary>The room as the dossier stands.</summary>
    public static SeeView Of(OpenDossier dossier) => new([.. Rows(dossier)]);

    private static IEnumerable<PictureRow> Rows(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        string? Hash(string reference) => reference.Length > 0 && dossier.Model.Picture(reference) is { Found: true } found ? found.Sha256 : null;
        var spots = view.Live<SpotSighting>().Where(spot => spot.Value.Middle is not null).ToLookup(spot => Hash(spot.Value.Picture), StringComparer.Ordinal);
        var tags = view.Live<PictureSighting>().ToLookup(each => Hash(each.Value.File), PictureTags.Of, StringComparer.Ordinal);
        foreach (var file in view.Live<FileAdded>().Select(sighting => sighting.Value).DistinctBy(file => file.Sha256, StringComparer.Ordinal))
        {
            if (!file.Type.StartsWith("image/", StringComparison.Ordinal))
            {
                yield return new(file.Name, file.Sha256, file.Type.Length > 0 ? file.Type : "not recognised", file.Bytes, null, null);
                continue;
            }

            var said = tags[file.Sha256].LastOrDefault() ?? PictureTags.None;
            var header = dossier.Picture(file.Sha256, file.Name);
            yield return header.TryValue(out var found)
                ? new(file.Name, file.Sha256, found.Kind.Says, file.Bytes, found.Width, found.Height, PictureScaleText.Of(dossier, file.Sha256, found.Frame), "", spots[file.Sha256].Count(), said.Side, said.Zoom, said.Light)
                : new(file.Name, file.Sha256, file.Type, file.Bytes, null, null, "", header.Faults[0].Say);
        }
    }
}
