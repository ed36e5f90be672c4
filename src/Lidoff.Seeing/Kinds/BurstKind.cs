using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>Frames that belong together.</summary>
public sealed class BurstKind : EvidenceKind<BurstSighting>
{
    /// <summary>Most frames of one burst.</summary>
    public const int Most = 100;

    /// <inheritdoc/>
    public override string Name => "burst";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "Frames that a camera took one right after the other, to be averaged or stacked.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("burst", "text", true, "its short name"),
        new("frames", "texts", true, "content hashes of its frames in the order they were taken; two at least"),
        new("zoom", "text", false, "zoom tag of all of them"),
        new("light", "text", false, "how they were lit"),
        new("camera", "text", false, "which camera took them"),
    ];

    /// <inheritdoc/>
    public override Outcome<BurstSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var name = reader.Text("burst", 40);
        var frames = reader.Texts("frames", 2, Most, 255);
        var zoom = reader.OptionalText("zoom", 100) ?? "";
        var light = reader.OptionalText("light", 100) ?? "";
        var camera = reader.OptionalText("camera", 100) ?? "";
        return reader.Done(() => new BurstSighting(name, frames, zoom, light, camera));
    }
}
