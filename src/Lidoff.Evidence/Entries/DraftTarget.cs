namespace Lidoff.Evidence.Entries;

/// <summary>What a draft speaks about: an entry of the journal, or an earlier draft of the same batch, whose id is not known yet.</summary>
public readonly record struct DraftTarget
{
    private DraftTarget(EntryId? entry, int draft)
    {
        Entry = entry;
        Draft = draft;
    }

    /// <summary>The entry, or null where a draft is meant.</summary>
    public EntryId? Entry { get; }

    /// <summary>Place of the draft in its batch, from 0; only meant where <see cref="Entry"/> is null.</summary>
    public int Draft { get; }

    /// <summary>An entry of the journal.</summary>
    public static DraftTarget Of(EntryId entry) => new(entry, -1);

    /// <summary>The draft at place <paramref name="index"/> of the same batch, before the one that names it.</summary>
    public static DraftTarget OfDraft(int index) => new(null, index);
}
