namespace Lidoff.Evidence.Folding;

/// <summary>The live entries of one payload type; shared by all views between which it did not change.</summary>
internal sealed class LiveList(LiveEntry[] items)
{
    private object? typed;

    public LiveEntry[] Items => items;

    public IReadOnlyList<Sighting<T>> As<T>()
        where T : class
    {
        // Two threads may both build it; the first one's list is kept so that all readers hold the same.
        if (typed is null) Interlocked.CompareExchange(ref typed, Array.ConvertAll(items, e => new Sighting<T>(e.Entry, e.Specimen, (T)e.Value)), null);
        return (Sighting<T>[])typed;
    }
}
