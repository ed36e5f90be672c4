using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>The kind <c>undo</c>.</summary>
public sealed class UndoKind : EvidenceKind<Undoing>
{
    /// <inheritdoc/>
    public override string Name => ControlKinds.Undo;

    /// <inheritdoc/>
    public override int Version => ControlKinds.Version;

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Control;

    /// <inheritdoc/>
    public override string Room => "all rooms";

    /// <inheritdoc/>
    public override string Says => "Takes an entry back; undoing an undo brings back what it took.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys =>
    [
        new("target", "text", true, "the entry taken back: its id or the first 8 digits or more"),
        new("why", "text", false, "the reason"),
    ];

    /// <inheritdoc/>
    public override Outcome<Undoing> Read(JsonElement payload, int version)
    {
        var read = new PayloadReader(payload);
        var why = read.OptionalText("why") ?? "";
        return read.Done(() => new Undoing(why));
    }
}
