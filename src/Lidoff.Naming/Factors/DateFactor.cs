using Lidoff.Naming.Asking;
using Lidoff.Naming.Dates;
using Lidoff.Numbers;

namespace Lidoff.Naming.Factors;

/// <summary>The date code against the year a part came out: nothing is made before that, besides samples.</summary>
public sealed class DateFactor : ILikelihoodFactor
{
    /// <inheritdoc/>
    public string Evidence => "date_code";

    /// <inheritdoc/>
    public int Order => 100;

    /// <summary>A code read by the wrong rule, a year remembered wrongly.</summary>
    public double BlunderRate => 0.1;

    /// <inheritdoc/>
    public bool Speaks(NameEvidence evidence) => evidence.DateCode is not null;

    /// <inheritdoc/>
    public IFactorReading Read(FactorQuestion question) => new Reading(this, question);

    private sealed class Reading : IFactorReading
    {
        private readonly FactorQuestion question;
        private readonly Dictionary<int, double> logs = [];
        private readonly DateCode code;

        internal Reading(DateFactor factor, FactorQuestion question)
        {
            this.question = question;
            code = DateCodes.ReadOne(question.Evidence.DateCode!, null);
            if (code.Readings.Count == 0) return;
            var years = question.Catalogue.Parts.Select(p => p.Introduced).OfType<int>().GroupBy(y => y).OrderBy(g => g.Key).ToArray();
            var mean = years.Sum(g => g.Count() * Possible(g.Key)) / Math.Max(1, years.Sum(g => g.Count()));
            foreach (var year in years) logs[year.Key] = Blunder.Cap(Possible(year.Key) / Math.Max(mean, 1e-3), factor.BlunderRate);
        }

        public double Part(int index) => question.Catalogue.Parts[index].Introduced is { } year ? logs.GetValueOrDefault(year) : 0;

        public double None(int group) => 0;

        public string Say(int index) => FactorSentences.Date(code, question.Catalogue.Parts[index].Introduced);

        /// <summary>Probability that the code's date is not before the year a part came out (samples go out about a year ahead).</summary>
        private double Possible(int introduced)
        {
            double possible = 0, all = 0;
            foreach (var reading in code.Readings)
            {
                all += reading.P;
                if (reading.Weeks.To.Year >= introduced - 1) possible += reading.P;
            }
            return possible + (1 - all);
        }
    }
}
