using Lidoff.Naming.Asking;
using Lidoff.Naming.Knowing;

namespace Lidoff.Naming.Factors;

/// <summary>What a factor is asked: the evidence of one spot against the catalogue.</summary>
public sealed class FactorQuestion
{
    private OutlineMixture? outlines;

    /// <summary>Evidence of one spot and the prepared catalogue.</summary>
    public FactorQuestion(NameEvidence evidence, NamingCatalogue catalogue)
    {
        Evidence = evidence;
        Catalogue = catalogue;
    }

    /// <summary>What is known about the spot.</summary>
    public NameEvidence Evidence { get; }

    /// <summary>The parts it is held against.</summary>
    public NamingCatalogue Catalogue { get; }

    /// <summary>Package, body, pins, pitch and height at once: they hang together, so they are weighed together.</summary>
    internal OutlineMixture Outlines => outlines ??= new OutlineMixture(Evidence, Catalogue);
}
