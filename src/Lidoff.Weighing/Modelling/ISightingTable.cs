using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;

namespace Lidoff.Weighing.Modelling;

/// <summary>One kind of sighting as inputs of the recompute graph; see <see cref="SightingTable{T}"/>.</summary>
public interface ISightingTable
{
    /// <summary>The payload type it holds.</summary>
    Type Type { get; }

    /// <summary>Takes in what came and what went, and sets only the groups that this touches.</summary>
    void Feed(RecomputeGraph graph, IEnumerable<LiveEntry> added, IEnumerable<LiveEntry> removed, Func<EntryId, int> position, bool reordered);
}
