using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Kinds;

/// <summary>A person says that specimens hold the same part at a spot.</summary>
public sealed class AlikeKind : EvidenceKind<SpecimensAlike>
{
    /// <inheritdoc/>
    public override string Name => "alike";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "Name";

    /// <inheritdoc/>
    public override string Says => "A person says that specimens hold the same part at a spot: what was seen on one of them counts for the others too.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "the spot's designator"),
        new("specimens", "list", true, "two or more specimens, by their short names"),
        new("why", "text", true, "the reason"),
    ];

    /// <inheritdoc/>
    public override Outcome<SpecimensAlike> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = reader.Text("spot", 40);
        var specimens = reader.Texts("specimens", least: 2, most: 50, longest: 40);
        var why = reader.Text("why");
        return reader.Done(() => new SpecimensAlike(spot, specimens, why));
    }
}
