using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Calculating;

/// <summary>One run of a calculation: first order from the slopes, Monte Carlo from the draws, and whether they agree.</summary>
internal static class CalculationRun
{
    // "Part notably": a tenth in uncertainty, a quarter of an uncertainty in position. A convention of ours.
    private const double UncertaintyMargin = 0.1;
    private const double PositionMargin = 0.25;

    public static CalculationValue Of(
        Calculation calculation, IReadOnlyList<Uncertain> inputs, ulong seed, int samples, CorrelationMatrix? correlations, int threads)
    {
        double[] best = new double[inputs.Count], dof = new double[inputs.Count];
        var certain = true;
        for (var i = 0; i < best.Length; i++)
        {
            best[i] = inputs[i].Value;
            dof[i] = inputs[i].Dof;
            certain &= inputs[i].U == 0;
        }

        var value = calculation.Nominal(best);
        var slopes = calculation.Slopes(best);
        var covariance = InputCovariance.Of(inputs, correlations);
        var terms = covariance.VarianceTerms(slopes);
        var variance = Statistics.Sum(terms);
        var firstOrder = Math.Sqrt(variance);

        var draws = certain
            ? new Draws(double.IsFinite(value) ? [value, value] : [], double.IsFinite(value) ? 0 : samples)
            : MonteCarlo.Run(calculation, inputs, seed, samples, correlations, threads);
        var u = draws.StandardDeviation;

        var spreads = new double[best.Length];
        var shares = new InputShare[best.Length];
        for (var i = 0; i < shares.Length; i++)
        {
            spreads[i] = inputs[i].U == 0 ? 0 : Math.Abs(slopes[i]) * inputs[i].U;
            shares[i] = new(calculation.Info.Inputs[i].Key, variance == 0 ? 0 : terms[i] / variance);
        }

        return new CalculationValue
        {
            Value = value,
            U = u,
            FirstOrderU = firstOrder,
            Mean = draws.Mean,
            Median = draws.Quantile(0.5),
            Interval90 = draws.Middle(0.9),
            Dof = WelchSatterthwaite.Effective(firstOrder, spreads, dof),
            Shares = shares,
            Slopes = slopes,
            Samples = samples,
            Skipped = draws.Skipped,
            Parted = !(Math.Abs(u - firstOrder) <= UncertaintyMargin * Math.Max(u, firstOrder)
                && Math.Abs(draws.Mean - value) <= PositionMargin * u),
        };
    }
}
