using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See.Composing;

/// <summary>The pictures that others can be made of, by name as people count: p2 before p10; those that were made and stand, by hash; and whether the former were listed at all.</summary>
public sealed record ComposeView(ValueList<ComposeRow> Pictures, ValueList<string> Made, bool Listed)
{
    /// <summary>As the dossier stands; what could be chosen only for a panel that is <paramref name="open"/>, since the header of every picture is looked at for it.</summary>
    public static ComposeView Of(OpenDossier dossier, bool open) =>
        new(open ? Offered(dossier) : [], [.. dossier.Session.View.Live<ComposedSighting>().Select(each => each.Value.Picture)], open);

    private static ValueList<ComposeRow> Offered(OpenDossier dossier) => [.. dossier.Session.View.Live<FileAdded>().Select(file => file.Value)
        .Where(file => file.Type.StartsWith("image/", StringComparison.Ordinal)).DistinctBy(file => file.Sha256, StringComparer.Ordinal)
        .Select(file => (file, Header: dossier.Picture(file.Sha256, file.Name))).Where(each => each.Header.Ok)
        .Select(each => new ComposeRow(each.file.Sha256, each.file.Name, each.Header.Value.Width, each.Header.Value.Height, PictureScaleText.Along(dossier, each.file.Sha256, each.Header.Value.Frame) is { } scale ? 1000 / scale.PxPerMm : null))
        .OrderBy(row => row.Name, NaturalOrder.Instance).ThenBy(row => row.Sha256, StringComparer.Ordinal)];
}
