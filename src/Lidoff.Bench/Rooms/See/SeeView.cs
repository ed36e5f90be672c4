using System.Globalization;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Measuring;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See;

/// <summary>What the room See shows: every file of the dossier, pictures with their scale.</summary>
/// <param name="Pictures">In the order in which they came.</param>
public sealed record SeeView(ValueList<PictureRow> Pictures)
{
    /// <summary>The room as the dossier stands.</summary>
    public static SeeView Of(OpenDossier dossier) => new([.. Rows(dossier)]);

    private static IEnumerable<PictureRow> Rows(OpenDossier dossier)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var file in dossier.Session.View.Live<FileAdded>().Select(sighting => sighting.Value).Where(file => seen.Add(file.Sha256)))
        {
            if (!file.Type.StartsWith("image/", StringComparison.Ordinal))
            {
                yield return new(file.Name, file.Sha256, file.Type.Length > 0 ? file.Type : "not recognised", file.Bytes, null, null);
                continue;
            }

            var header = dossier.Picture(file.Sha256, file.Name);
            yield return header.TryValue(out var found)
                ? new(file.Name, file.Sha256, found.Kind.Says, file.Bytes, found.Width, found.Height, Scale(dossier, file.Sha256, found.Frame))
                : new(file.Name, file.Sha256, file.Type, file.Bytes, null, null, "", header.Faults[0].Say);
        }
    }

    private static string Scale(OpenDossier dossier, string sha256, PictureFrame frame)
    {
        var references = dossier.Model.Scale(sha256).References;
        if (references.Count == 0) return "";
        var first = references[0].Value.Reference;
        var fit = ScaleFit.To([.. references.Select(reference => reference.Value.Reference)], frame, MeasureJob.DefaultClickPx, null, 0);
        var (pxPerMm, relative) = fit.Along(first.From, first.To, first.HeightMm);
        return string.Create(CultureInfo.InvariantCulture, $"{pxPerMm:0.##} px/mm ± {relative * 100:0.##} %");
    }
}
