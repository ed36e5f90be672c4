using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>
/// The mean of several readings of one thing, each weighted by its own doubt. <see cref="U"/> contains the term that all
/// readings share (the same scale, the same meter), which more readings do not make smaller. <see cref="Birge"/> well above
/// one says that the readings disagree more than their doubts allow.
/// </summary>
public sealed record WeightedMean(double Value, double U, double OwnU, double Birge)
{
    /// <summary>From readings with their own standard uncertainties (above zero), and one they share (zero or more), SI.</summary>
    public static WeightedMean Of(IReadOnlyList<(double Value, double U)> readings, double sharedU = 0)
    {
        Guard.NotNull(readings);
        Guard.That(readings.Count > 0, "at least one reading");
        Guard.NotNegative(sharedU);
        double[] weights = new double[readings.Count], terms = new double[readings.Count];
        for (var i = 0; i < weights.Length; i++)
        {
            weights[i] = 1 / (Guard.Positive(readings[i].U) * readings[i].U);
            terms[i] = weights[i] * Guard.Finite(readings[i].Value);
        }

        var sum = Statistics.Sum(weights);
        var value = Statistics.Sum(terms) / sum;
        for (var i = 0; i < terms.Length; i++) terms[i] = weights[i] * (readings[i].Value - value) * (readings[i].Value - value);
        var birge = terms.Length == 1 ? 1 : Math.Sqrt(Statistics.Sum(terms) / (terms.Length - 1));
        return new(value, Math.Sqrt((1 / sum) + (sharedU * sharedU)), Math.Sqrt(1 / sum), birge);
    }
}
