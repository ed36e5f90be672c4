using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>What a dossier's entries amount to after supersede, undo and erase; the same for any order in which they arrived.</summary>
public interface IDossierView
{
    /// <summary>Short name of the dossier.</summary>
    string Dossier { get; }

    /// <summary>Live entries whose payload is a <typeparamref name="T"/>, in fold order.</summary>
    IReadOnlyList<Sighting<T>> Live<T>() where T : class;

    /// <summary>Every entry in fold order with what became of it.</summary>
    IReadOnlyList<FoldedEntry> Entries { get; }
}
