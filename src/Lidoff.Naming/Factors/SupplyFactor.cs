using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;
using Lidoff.Numbers;

namespace Lidoff.Naming.Factors;

/// <summary>The supply it was seen at, against the range it works in.</summary>
public sealed class SupplyFactor : ILikelihoodFactor
{
    /// <summary>Rails are read to about a twentieth, and parts are run a little beyond their range.</summary>
    private const double Slack = 0.05;

    /// <inheritdoc/>
    public string Evidence => "supply";

    /// <inheritdoc/>
    public int Order => 90;

    /// <summary>The rail of another pin (I/O against core) is the usual mistake.</summary>
    public double BlunderRate => 0.1;

    /// <inheritdoc/>
    public bool Speaks(NameEvidence evidence) => evidence.SupplyV is not null;

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question) => new Reading(this, question);

    private static bool? Fits(Part part, double volts) =>
        part.SupplyLeast is null && part.SupplyMost is null ? null
        : (part.SupplyLeast is not { } least || volts >= least * (1 - Slack)) && (part.SupplyMost is not { } most || volts <= most * (1 + Slack));

    private sealed class Reading : IFactorReading
    {
        private readonly FactorQuestion question;
        private readonly double volts, inside, outside;

        internal Reading(SupplyFactor factor, FactorQuestion question)
        {
            this.question = question;
            volts = question.Evidence.SupplyV!.Value;
            double known = 1, fit = 1;
            foreach (var part in question.Catalogue.Parts)
            {
                if (Fits(part, volts) is not { } fits) continue;
                known++;
                fit += fits ? 1 : 0;
            }
            // A fitting part is seen at this rail as often as all fitting parts share it; anything else only by blunder.
            var share = fit / known;
            inside = Elementary.Log(1 / (share + ((1 - share) * factor.BlunderRate)));
            outside = Elementary.Log(factor.BlunderRate / (share + ((1 - share) * factor.BlunderRate)));
        }

        public double Part(int index) => Fits(question.Catalogue.Parts[index], volts) is { } fits ? (fits ? inside : outside) : 0;

        public double None(int group) => 0;

        public string Say(int index)
        {
            var part = question.Catalogue.Parts[index];
            return FactorSentences.Supply(volts, part.SupplyLeast, part.SupplyMost, Fits(part, volts) ?? true);
        }
    }
}
