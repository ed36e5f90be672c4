using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Folding;

/// <summary>What came to count and what ceased to between two versions of a fold: what the recompute graph is fed with.</summary>
/// <param name="From">Version before.</param>
/// <param name="To">Version after.</param>
/// <param name="Added">Entries that count now and did not, in fold order.</param>
/// <param name="Removed">Entries that counted and do no longer, in fold order.</param>
/// <param name="Reordered">True when entries came in between older ones, so that the order of those that stayed may be another.</param>
public sealed record FoldChange(long From, long To, IReadOnlyList<LiveEntry> Added, IReadOnlyList<LiveEntry> Removed, bool Reordered)
{
    /// <summary>The payload types whose live entries are others than before.</summary>
    public IReadOnlySet<Type> Types { get; } = Added.Concat(Removed).Select(e => e.Type).ToHashSet();

    /// <summary>This change and the one after it as one; what came and went again in between is in neither list.</summary>
    public FoldChange Then(FoldChange next)
    {
        Guard.That(Guard.NotNull(next).From == To, "changes that follow each other");
        var came = Added.ToDictionary(e => e.Id);
        var went = Removed.ToDictionary(e => e.Id);
        foreach (var entry in next.Removed)
        {
            if (!came.Remove(entry.Id)) went[entry.Id] = entry;
        }

        foreach (var entry in next.Added)
        {
            if (!went.Remove(entry.Id)) came[entry.Id] = entry;
        }

        return new(From, next.To, Added.Concat(next.Added).Where(e => came.Remove(e.Id)).ToList(), Removed.Concat(next.Removed).Where(e => went.Remove(e.Id)).ToList(), Reordered || next.Reordered);
    }
}
