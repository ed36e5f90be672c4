using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>An entry inside a fold: its payload read once, and what the controls made of it.</summary>
internal sealed class FoldNode
{
    private FoldedEntry? folded;

    public FoldNode(StoredEntry stored, EvidenceKinds kinds)
    {
        Entry = stored.Entry;
        Payload = stored.Payload;
        (OwnFate, Live, Faults) = Read(stored, kinds);
        Fate = OwnFate;
    }

    public Entry Entry { get; }

    public EntryId Id => Entry.Id;

    /// <summary>Place in fold order.</summary>
    public int Position { get; set; }

    /// <summary>True when every entry before it in fold order was known to its writer.</summary>
    public bool KnowsAll { get; set; }

    /// <summary>What it is where no control speaks about it: live, unknown or refused.</summary>
    public EntryFate OwnFate { get; }

    public EntryFate Fate { get; private set; }

    public IReadOnlyList<EntryId> By { get; private set; } = [];

    /// <summary>The payload read, where it could be and was not erased.</summary>
    public LiveEntry? Live { get; private set; }

    public bool Counts => Fate == EntryFate.Live;

    public FoldedEntry Folded => folded ??= new(Entry, Fate, By) { Faults = Faults, Payload = Payload };

    /// <summary>True when it is a control of the given kind in a version whose meaning is known.</summary>
    public bool Is(string control) => Entry.Kind == control && Entry.KindVersion <= ControlKinds.Version && Entry.Format <= EntryCodec.Format;

    public bool IsControl => Is(ControlKinds.Undo) || Is(ControlKinds.Supersede) || Is(ControlKinds.Erase);

    private ReadOnlyMemory<byte>? Payload { get; set; }

    private IReadOnlyList<Fault> Faults { get; set; }

    public void Settle(EntryFate fate, IReadOnlyList<EntryId> by)
    {
        if (fate == Fate && by.SequenceEqual(By)) return;
        Fate = fate;
        By = by;
        folded = null;
        if (fate != EntryFate.Erased) return;
        Live = null;
        Payload = null;
        Faults = [];
    }

    private static (EntryFate Fate, LiveEntry? Live, IReadOnlyList<Fault> Faults) Read(StoredEntry stored, EvidenceKinds kinds)
    {
        var entry = stored.Entry;
        if (entry.Format > EntryCodec.Format || !kinds.TryFind(entry.Kind, out var kind) || entry.KindVersion > kind.Version) return (EntryFate.Unknown, null, []);

        // Where an erasure took it, a control says so; otherwise it has gone missing on the disk.
        if (stored.Payload is not { } payload) return (EntryFate.Refused, null, [EntrySentences.PayloadGone(entry.Id)]);
        // A payload can come from anywhere; no kind's reader shall meet text that is no text, or a key twice.
        if (JsonLines.Refusal(payload.Span) is { } refusal) return (EntryFate.Refused, null, [EntrySentences.PayloadBroken(entry.Id, refusal)]);
        using var document = JsonDocument.Parse(payload);
        var read = kind.ReadUntyped(document.RootElement, entry.KindVersion);
        return read.TryValue(out var value)
            ? (EntryFate.Live, new LiveEntry(entry, Specimen(document.RootElement), kind.PayloadType, value), [])
            : (EntryFate.Refused, null, read.Faults);
    }

    private static string Specimen(JsonElement payload)
    {
        var read = new PayloadReader(payload);
        return read.OptionalText("specimen") ?? "";
    }
}
