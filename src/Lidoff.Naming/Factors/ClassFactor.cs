using Lidoff.Naming.Asking;
using Lidoff.Naming.Knowing;
using Lidoff.Numbers;

namespace Lidoff.Naming.Factors;

/// <summary>What kind of part a person takes it for. It moves "none of these" too: an unlisted part is of a kind as well.</summary>
public sealed class ClassFactor : ILikelihoodFactor
{
    /// <inheritdoc/>
    public string Evidence => "class";

    /// <inheritdoc/>
    public int Order => 110;

    /// <summary>People and tables draw the lines between kinds differently (a charger is also a power path).</summary>
    public double BlunderRate => 0.1;

    /// <inheritdoc/>
    public bool Speaks(NameEvidence evidence) => evidence.Class is not null && ClassGroups.OfSpot(evidence.Class) != ClassGroups.Other;

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question)
    {
        var said = ClassGroups.OfSpot(question.Evidence.Class!);
        var share = said.Share / ClassGroups.All.Sum(g => g.Share);
        var logs = ClassGroups.All.Select(g => Elementary.Log(g == said ? (1 - BlunderRate) / share : BlunderRate / (1 - share))).ToArray();
        return new GroupReading(question, logs, index => FactorSentences.Class(question.Evidence.Class!, question.Catalogue.Parts[index].Class, logs[question.Catalogue.GroupOf[index]] > 0));
    }
}
