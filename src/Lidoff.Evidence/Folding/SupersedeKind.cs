using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>The kind <c>supersede</c>.</summary>
public sealed class SupersedeKind : EvidenceKind<Supersession>
{
    /// <inheritdoc/>
    public override string Name => ControlKinds.Supersede;

    /// <inheritdoc/>
    public override int Version => ControlKinds.Version;

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Control;

    /// <inheritdoc/>
    public override string Room => "all rooms";

    /// <inheritdoc/>
    public override string Says => "Puts a better entry in the place of another.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys =>
    [
        new("target", "text", true, "the entry whose place is taken: its id or the first 8 digits or more"),
        new("by_line", "number", false, "line of the same input that takes its place"),
        new("by_entry", "text", false, "entry that takes its place, where it is no line of the same input"),
        new("why", "text", false, "the reason"),
    ];

    /// <inheritdoc/>
    public override Outcome<Supersession> Read(JsonElement payload, int version)
    {
        var read = new PayloadReader(payload);
        var why = read.OptionalText("why") ?? "";
        return read.Done(() => new Supersession(why));
    }
}
