using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Store;

/// <summary>
/// One dossier of a workspace, open: its fold kept up with the journal, whoever writes. What is appended through it is stored
/// for good before it shows. One thread at a time.
/// </summary>
public sealed class DossierSession
{
    private readonly Workspace workspace;
    private long upTo;

    private DossierSession(Workspace workspace, string name, EvidenceKinds kinds, Fold fold, JournalSlice slice)
    {
        this.workspace = workspace;
        Name = name;
        Kinds = kinds;
        Fold = fold;
        upTo = slice.UpTo;
        Damaged = slice.Damaged;
    }

    /// <summary>Short name.</summary>
    public string Name { get; }

    /// <summary>The kinds payloads are read by.</summary>
    public EvidenceKinds Kinds { get; }

    /// <summary>The fold so far.</summary>
    public Fold Fold { get; }

    /// <summary>Rows of the journal that were changed on the disk, a sentence each.</summary>
    public IReadOnlyList<Fault> Damaged { get; private set; }

    /// <summary>What counts now.</summary>
    public IDossierView View => Fold.View;

    /// <summary>Opens a dossier that somebody has begun.</summary>
    public static Outcome<DossierSession> Open(Workspace workspace, string name, EvidenceKinds kinds)
    {
        Guard.NotNull(workspace);
        if (!DossierName.Fits(name)) return StoreSentences.DossierName(name);
        var store = workspace.Store;
        return store.Dossiers().Then<DossierSession>(known => !known.Contains(name, StringComparer.Ordinal)
            ? StoreSentences.NoDossier(name, known)
            : store.Heads(name).Then(heads => store.Read(name).Then(slice =>
            {
                // The key of the heads is taken first: a snapshot that is too old is then not believed, never one too new.
                var key = FoldSnapshot.Key(heads, kinds);
                var kept = store.Cached(name, key);
                var fold = FoldSnapshot.Open(name, kinds, slice.Entries, key, kept);
                if (kept is null && slice.Entries.Count >= SnapshotFrom) store.Cache(name, key, FoldSnapshot.Write(fold, key));
                return new DossierSession(workspace, name, kinds, fold, slice);
            })));
    }

    // Below this many entries sorting is quicker than keeping.
    private const int SnapshotFrom = 500;

    /// <summary>Begins a dossier; refused when there is one of that name.</summary>
    public static Outcome<IReadOnlyList<StoredEntry>> Begin(Workspace workspace, string name, string title = "", string notice = "")
    {
        Guard.NotNull(workspace);
        if (!DossierName.Fits(name)) return StoreSentences.DossierName(name);
        var store = workspace.Store;
        return store.Append(
            [EntryDraft.Of(name, new DossierKind(), json =>
            {
                if (title.Length > 0) json.WriteString("title", title);
                if (notice.Length > 0) json.WriteString("notice", notice);
            })],
            () => store.Dossiers() is var known && known.Ok && known.Value.Contains(name, StringComparer.Ordinal) ? StoreSentences.DossierExists(name) : null);
    }

    /// <summary>Stores drafts, all or nothing, and takes them and everything else that is new into the fold.</summary>
    public Outcome<IReadOnlyList<StoredEntry>> Append(IReadOnlyList<EntryDraft> drafts, Func<Fault?>? lastCheck = null)
    {
        var stored = workspace.Store.Append(drafts, lastCheck);
        if (stored.Ok) Refresh();
        return stored;
    }

    /// <summary>Takes in what any process has stored since. Says what changed; null when the journal could not be read just now.</summary>
    public FoldChange? Refresh()
    {
        var read = workspace.Store.Read(Name, upTo);
        if (!read.TryValue(out var slice)) return null;
        upTo = slice.UpTo;
        if (slice.Damaged.Count > 0) Damaged = [.. Damaged, .. slice.Damaged];
        return Fold.Apply(slice.Entries);
    }
}
