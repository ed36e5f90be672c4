using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>The kind <c>erase</c>.</summary>
public sealed class EraseKind : EvidenceKind<Erasure>
{
    /// <inheritdoc/>
    public override string Name => ControlKinds.Erase;

    /// <inheritdoc/>
    public override int Version => ControlKinds.Version;

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Control;

    /// <inheritdoc/>
    public override string Room => "all rooms";

    /// <inheritdoc/>
    public override string Says => "Removes an entry's content for good; that it was there stays visible.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys =>
    [
        new("target", "text", true, "the entry whose content is removed: its id or the first 8 digits or more"),
        new("why", "text", false, "the reason, without what was erased"),
    ];

    /// <inheritdoc/>
    public override Outcome<Erasure> Read(JsonElement payload, int version)
    {
        var read = new PayloadReader(payload);
        var why = read.OptionalText("why") ?? "";
        return read.Done(() => new Erasure(why));
    }
}
