using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>A stored file is a picture of the specimen.</summary>
public sealed class PictureKind : EvidenceKind<PictureSighting>
{
    /// <inheritdoc/>
    public override string Name => "picture";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A stored file is a picture of the specimen, with the side it shows, zoom, light and camera.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("file", "text", true, "content hash or name of the stored file"),
        new("name", "text", false, "name of the file"),
        new("side", "text", false, "top, bottom, edge or other"),
        new("zoom", "text", false, "zoom tag; pictures of one camera and zoom share a scale"),
        new("light", "text", false, "how it was lit"),
        new("camera", "text", false, "which camera took it"),
    ];

    /// <inheritdoc/>
    public override Outcome<PictureSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var file = reader.Text("file", 255);
        var name = reader.OptionalText("name", 255) ?? "";
        var side = reader.OptionalOneOf("side", PictureSide.Unknown, ("top", PictureSide.Top), ("bottom", PictureSide.Bottom), ("edge", PictureSide.Edge), ("other", PictureSide.Other));
        var zoom = reader.OptionalText("zoom", 100) ?? "";
        var light = reader.OptionalText("light", 100) ?? "";
        var camera = reader.OptionalText("camera", 100) ?? "";
        return reader.Done(() => new PictureSighting(file, name, side, zoom, light, camera));
    }
}
