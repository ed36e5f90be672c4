using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Kinds;

/// <summary>A place worth pointing at.</summary>
public sealed class SpotKind : EvidenceKind<SpotSighting>
{
    /// <inheritdoc/>
    public override string Name => "spot";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A place worth pointing at, with its role and why; marked in a picture when it was pointed at there.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "its designator, such as U3"),
        new("role", "text", false, "what it is for"),
        new("why", "text", false, "why one thinks so"),
        new("class", "text", false, "what sort of thing it is, such as one of " + string.Join(", ", SpotClasses.Words)),
        new("picture", "text", false, "file name, entry id or the first digits of the file's hash; needed with point and box"),
        new("point", "point", false, "where it lies, px"),
        new("box", "list of numbers", false, "x, y, width and height, px, instead of point"),
    ];

    /// <inheritdoc/>
    public override Outcome<SpotSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = SpotName.Read(reader);
        var role = reader.OptionalText("role") ?? "";
        var why = reader.OptionalText("why") ?? "";
        var kind = reader.OptionalText("class", 100) ?? "";
        var picture = reader.OptionalText("picture", 255) ?? "";
        PicturePoint? at = reader.OptionalPoint("point") is { } place ? new(place.X, place.Y) : null;
        var sides = reader.Has("box") ? reader.Numbers("box", 4, 4) : [];
        PixelBox? box = sides.Count == 4 ? new(sides[0], sides[1], sides[2], sides[3]) : null;
        if (box is { } shape && !(shape.Width > 0 && shape.Height > 0)) reader.Fail("box", "x, y, width and height with width and height above zero");
        if (reader.Has("point") && reader.Has("box")) reader.Fail("box", "left out when \"point\" is given");
        if (picture.Length == 0 && (reader.Has("point") || reader.Has("box"))) reader.Fail("picture", "the picture in which the spot was pointed at");
        return reader.Done(() => new SpotSighting(spot, role, why, kind, picture, at, box));
    }
}
