using Lidoff.Evidence.Entries;

namespace Lidoff.Evidence.Folding;

/// <summary>One version of a fold, which never changes.</summary>
internal sealed class DossierView(
    string dossier, long version, FoldedEntry[] entries, IReadOnlyDictionary<Type, LiveList> live, IReadOnlyList<ConcurrentSupersede> concurrent) : IDossierView
{
    private readonly Lazy<Dictionary<EntryId, FoldedEntry>> byId = new(() => entries.ToDictionary(e => e.Entry.Id));

    public string Dossier => dossier;

    public long Version => version;

    public IReadOnlyList<FoldedEntry> Entries => entries;

    public IReadOnlyList<ConcurrentSupersede> Concurrent => concurrent;

    public IReadOnlyList<Sighting<T>> Live<T>()
        where T : class => live.TryGetValue(typeof(T), out var list) ? list.As<T>() : [];

    public FoldedEntry? Find(EntryId id) => byId.Value.GetValueOrDefault(id);
}
