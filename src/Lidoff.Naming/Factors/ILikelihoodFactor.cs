using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>
/// One line of evidence as a likelihood factor over the identity of a spot. Added by adding one file; found by type. What a factor
/// says is bounded by its blunder rate: how often such a sighting is of the wrong thing altogether.
/// </summary>
public interface ILikelihoodFactor
{
    /// <summary>The word in <c>"evidence"</c>.</summary>
    string Evidence { get; }

    /// <summary>Place in the list of reasons; every factor has its own.</summary>
    int Order { get; }

    /// <summary>How often such a sighting is a blunder, 0 to 1.</summary>
    double BlunderRate { get; }

    /// <summary>True when the evidence holds what this factor needs.</summary>
    bool Speaks(NameEvidence evidence);

    /// <summary>Works out what the evidence says of every part.</summary>
    IFactorReading Read(FactorQuestion question);
}
