using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>A moment of a video.</summary>
public sealed class MomentKind : EvidenceKind<MomentSighting>
{
    /// <inheritdoc/>
    public override string Name => "moment";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A moment of a recording or video that matters, tied to a spot.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("recording", "text", true, "short name of the recording, or file name or content hash of the video"),
        new("second", "number", true, "time in it, s from its beginning"),
        new("spot", "text", false, "the spot it is about"),
        new("says", "text", false, "what was seen"),
    ];

    /// <inheritdoc/>
    public override Outcome<MomentSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var recording = reader.Text("recording", 255);
        var second = reader.Number("second", NumberRange.NotNegative);
        var spot = reader.Has("spot") ? SpotName.Read(reader) : "";
        var says = reader.OptionalText("says", 1000) ?? "";
        return reader.Done(() => new MomentSighting(recording, second, spot, says));
    }
}
