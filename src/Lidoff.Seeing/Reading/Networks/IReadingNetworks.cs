using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Reading.Networks;

/// <summary>The networks of mark reading: one finds lines, one bodies among other parts, one reads. Safe from any thread.</summary>
public interface IReadingNetworks
{
    /// <summary>Looks for the networks, once; faults say what is missing or altered. Without any, the rest may be asked for.</summary>
    IReadOnlyList<Fault> Troubles { get; }

    /// <summary>SHA-256 of the finder, the finder of bodies and the reader.</summary>
    IReadOnlyList<string> Hashes { get; }

    /// <summary>What they run by: version and settings, for the record.</summary>
    string Settings { get; }

    /// <summary>What logs of whole lines are divided by.</summary>
    double LineTemperature { get; }

    /// <summary>The finder's maps of a sheet.</summary>
    FinderMaps Find(FinderSheet sheet);

    /// <summary>The maps of a sheet by the network that tells bodies among other parts best.</summary>
    FinderMaps Bodies(FinderSheet sheet);

    /// <summary>The reader's lattices of strips, in their order.</summary>
    IReadOnlyList<CtcLattice> Score(IReadOnlyList<LineStrip> strips);
}
