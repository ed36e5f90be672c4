using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>
/// What a dossier's entries amount to after supersede, undo and erase; the same for any order in which they arrived. A view
/// never changes: the next one comes with the next change.
/// </summary>
public interface IDossierView
{
    /// <summary>Short name of the dossier.</summary>
    string Dossier { get; }

    /// <summary>Counts the changes of the fold that made this view, from 0. It says nothing about other folds of the same dossier.</summary>
    long Version => 0;

    /// <summary>Live entries whose payload is a <typeparamref name="T"/>, in fold order; the same list as long as none of them changes.</summary>
    IReadOnlyList<Sighting<T>> Live<T>() where T : class;

    /// <summary>Every entry in fold order with what became of it.</summary>
    IReadOnlyList<FoldedEntry> Entries { get; }

    /// <summary>Entries whose place was taken twice by people who had not seen each other's work, in fold order of the entry.</summary>
    IReadOnlyList<ConcurrentSupersede> Concurrent => [];

    /// <summary>The entry and what became of it, or null when the dossier has none of that id.</summary>
    FoldedEntry? Find(EntryId id) => Entries.FirstOrDefault(e => e.Entry.Id == id);
}
