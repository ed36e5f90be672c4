using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>What stands on a body.</summary>
public sealed class MarkKind : EvidenceKind<MarkSighting>
{
    /// <inheritdoc/>
    public override string Name => "mark";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "What stands on a body, line by line; ? for a character that cannot be read, or alternatives place by place.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "what it stands on"),
        new("lines", "list", true, "lines from the top: a text (? one unread character, * any number), or a list of places, each a list of [character, probability], with \"\" for nothing printed there"),
    ];

    /// <inheritdoc/>
    public override Outcome<MarkSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = SpotName.Read(reader);
        var lines = MarkLines.Read(reader);
        return reader.Done(() => new MarkSighting(spot, lines.ToValueList()));
    }
}
