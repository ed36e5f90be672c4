using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;

namespace Lidoff.Naming.Factors;

/// <summary>
/// A factor about the outline. These depend on each other (a 6 × 6 mm QFN of 0.4 mm pitch has 48 pins as a matter of course), so each
/// gives a likelihood per outline, and <see cref="OutlineMixture"/> works out what each adds to those before it.
/// </summary>
public abstract class OutlineFactor : ILikelihoodFactor
{
    /// <inheritdoc/>
    public abstract string Evidence { get; }

    /// <inheritdoc/>
    public abstract int Order { get; }

    /// <inheritdoc/>
    public abstract double BlunderRate { get; }

    /// <inheritdoc/>
    public abstract bool Speaks(NameEvidence evidence);

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question) => question.Outlines.Reading(this, question);

    /// <summary>
    /// Likelihood of the evidence given an outline, blunders included; null where the outline does not know. A density, or a
    /// probability: the unit cancels against the other outlines.
    /// </summary>
    internal abstract double? Likelihood(NameEvidence evidence, PackageFact outline);

    /// <summary>Likelihood of the evidence given an outline that nobody listed.</summary>
    internal abstract double Wide(NameEvidence evidence);

    /// <summary>The sentence for a part's outlines.</summary>
    internal abstract string Say(NameEvidence evidence, Part part, double log);

    /// <summary>Density of a normal spread without its far tails' underflow.</summary>
    private protected static double Normal(double off, double sigma)
    {
        var z = off / sigma;
        return Lidoff.Numbers.Elementary.Exp(-0.5 * z * z) / (sigma * 2.5066282746310002);
    }
}
