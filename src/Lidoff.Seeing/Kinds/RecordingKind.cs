using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>A video recorded at the bench.</summary>
public sealed class RecordingKind : EvidenceKind<RecordingSighting>
{
    /// <inheritdoc/>
    public override string Name => "recording";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A video was recorded at the bench, with or without voice.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("recording", "text", true, "its short name, by which moments know it"),
        new("file", "text", true, "content hash of the video"),
        new("voice", "true or false", false, "whether the microphone was on (default false)"),
        new("broke_off", "true or false", false, "whether it ended by itself (default false)"),
        new("zoom", "text", false, "zoom tag while it was recorded"),
        new("light", "text", false, "how it was lit"),
        new("camera", "text", false, "which camera took it"),
    ];

    /// <inheritdoc/>
    public override Outcome<RecordingSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var name = reader.Text("recording", 40);
        var file = reader.Text("file", 255);
        var voice = reader.OptionalFlag("voice") ?? false;
        var broke = reader.OptionalFlag("broke_off") ?? false;
        var zoom = reader.OptionalText("zoom", 100) ?? "";
        var light = reader.OptionalText("light", 100) ?? "";
        var camera = reader.OptionalText("camera", 100) ?? "";
        return reader.Done(() => new RecordingSighting(name, file, voice, broke, zoom, light, camera));
    }
}
