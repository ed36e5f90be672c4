using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>What was said of a picture as a whole; all texts empty where nothing was.</summary>
/// <param name="Entry">The entry that said it last; null where none did.</param>
/// <param name="Specimen">The specimen it shows.</param>
/// <param name="Name">The name it was given.</param>
/// <param name="Side">"top", "bottom", "edge" or "other".</param>
/// <param name="Zoom">Zoom tag.</param>
/// <param name="Light">How it was lit.</param>
/// <param name="Camera">Which camera took it.</param>
public sealed record PictureTags(EntryId? Entry, string Specimen, string Name, string Side, string Zoom, string Light, string Camera)
{
    /// <summary>Nothing said.</summary>
    public static PictureTags None { get; } = new(null, "", "", "", "", "", "");

    /// <summary>Of what was stored.</summary>
    public static PictureTags Of(Evidence.Folding.Sighting<PictureSighting> each) =>
        new(each.Id, each.Specimen, each.Value.Name, Word(each.Value.Side), each.Value.Zoom, each.Value.Light, each.Value.Camera);

    /// <summary>The lines to store: a new entry, in the place of the one before where there was one.</summary>
    public IReadOnlyList<Line> Lines(string sha256)
    {
        var line = Line.Of("picture").Set("specimen", Specimen).Set("file", sha256).Set("name", Name).Set("side", Side).Set("zoom", Zoom).Set("light", Light).Set("camera", Camera);
        return Entry is { } before ? Line.InPlaceOf(before.Hex, line) : [line];
    }

    private static string Word(PictureSide side) => side switch
    {
        PictureSide.Top => "top",
        PictureSide.Bottom => "bottom",
        PictureSide.Edge => "edge",
        PictureSide.Other => "other",
        _ => "",
    };
}
