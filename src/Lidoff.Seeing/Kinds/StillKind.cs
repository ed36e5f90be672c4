using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>Where a picture comes from that was taken out of a video.</summary>
public sealed class StillKind : EvidenceKind<StillSighting>
{
    /// <inheritdoc/>
    public override string Name => "still";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A picture is one frame of a video: which video, and which second of it.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("file", "text", true, "content hash of the picture"),
        new("video", "text", true, "content hash of the video"),
        new("second", "number", true, "time of the frame in it, s from its beginning"),
    ];

    /// <inheritdoc/>
    public override Outcome<StillSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var file = reader.Text("file", 255);
        var video = reader.Text("video", 255);
        var second = reader.Number("second", NumberRange.NotNegative);
        return reader.Done(() => new StillSighting(file, video, second));
    }
}
