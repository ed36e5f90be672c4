using Lidoff.Naming.Asking;
using Lidoff.Numbers;

namespace Lidoff.Naming.Factors;

/// <summary>
/// A register that tells the part. A value that nobody lists is strong evidence against every part whose value is known; relabelled and
/// copied parts keep it from being final.
/// </summary>
public sealed class IdentityFactor : ILikelihoodFactor
{
    /// <inheritdoc/>
    public string Evidence => "id_register";

    /// <inheritdoc/>
    public int Order => 80;

    /// <inheritdoc/>
    public double BlunderRate => 0.01;

    /// <inheritdoc/>
    public bool Speaks(NameEvidence evidence) => evidence.Identity is not null;

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question) => new Reading(this, question);

    private sealed class Reading : IFactorReading
    {
        /// <summary>How often a part's own value is returned: samples and undocumented revisions do not.</summary>
        private const double Right = 0.95;

        private readonly IdentityFactor factor;
        private readonly FactorQuestion question;
        private readonly RegisterFact seen;
        private readonly double background;
        private readonly double unlisted;
        private readonly Dictionary<int, double> logs = [];

        internal Reading(IdentityFactor factor, FactorQuestion question)
        {
            this.factor = factor;
            this.question = question;
            seen = question.Evidence.Identity!;
            double rows = 0, hits = 0;
            var listing = question.Catalogue.ByRegister.GetValueOrDefault(seen.Register, []);
            foreach (var index in listing)
            {
                var here = question.Catalogue.Parts[index].Identity.Where(i => i.Register == seen.Register).ToArray();
                rows++;
                hits += here.Any(i => i.Accepts(seen.Value)) ? 1.0 / here.Length : 0;
            }
            // Half of what answers at this register is in no table; its value may be anything.
            unlisted = 1.0 / (seen.Value > 0xFF ? 0x10000 : 0x100);
            background = (0.5 * hits / Math.Max(rows, 1)) + (0.5 * unlisted);
            foreach (var index in listing) logs[index] = Log(index);
        }

        public double Part(int index) => logs.GetValueOrDefault(index);

        private double Log(int index)
        {
            var here = question.Catalogue.Parts[index].Identity.Where(i => i.Register == seen.Register).ToArray();
            var right = here.Any(i => i.Accepts(seen.Value)) ? Right / here.Select(i => i.Value).Distinct().Count() : 0;
            return Blunder.Cap((right + ((1 - Right) * unlisted)) / background, factor.BlunderRate);
        }

        public double None(int group) => Elementary.Log(((0.5 * unlisted) + (0.5 * background)) / background);

        public string Say(int index) => FactorSentences.Identity(seen, question.Catalogue.Parts[index].Identity.Any(i => i.Register == seen.Register && i.Accepts(seen.Value)), [.. question.Catalogue.Parts[index].Identity.Where(i => i.Register == seen.Register).Select(i => i.Value).Distinct().Order()]);
    }
}
