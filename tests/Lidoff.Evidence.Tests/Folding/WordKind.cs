using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Tests.Folding;

/// <summary>The kind of <see cref="Word"/>, with drafts for what tests append.</summary>
public sealed class WordKind : EvidenceKind<Word>
{
    public override string Name => "word";

    public override EntryRole Role => EntryRole.Sighting;

    public override string Room => "See";

    public override string Says => "A word, for tests.";

    public override IReadOnlyList<KindKey> Keys => [new("text", "text", true, "the word")];

    public override Outcome<Word> Read(JsonElement payload, int version)
    {
        var read = new PayloadReader(payload);
        var text = read.Text("text", 100);
        return read.Done(() => new Word(text));
    }

    public static EvidenceKinds Kinds { get; } = new([new WordKind(), new SupersedeKind(), new UndoKind(), new EraseKind(), new DossierKind(), new FileKind()]);

    public static EntryDraft Of(string text, string dossier = "tag") => EntryDraft.Of(dossier, new WordKind(), json => json.WriteString("text", text));

    public static EntryDraft Undo(params EntryId[] targets) => Control(new UndoKind(), [.. targets.Select(DraftTarget.Of)]);

    public static EntryDraft Erase(params EntryId[] targets) => Control(new EraseKind(), [.. targets.Select(DraftTarget.Of)]);

    public static EntryDraft Supersede(EntryId old, EntryId better) => Control(new SupersedeKind(), [DraftTarget.Of(old), DraftTarget.Of(better)]);

    public static EntryDraft Supersede(EntryId old, int draft) => Control(new SupersedeKind(), [DraftTarget.Of(old), DraftTarget.OfDraft(draft)]);

    private static EntryDraft Control(IEvidenceKind kind, DraftTarget[] targets) => EntryDraft.Of("tag", kind) with { Targets = targets };
}
