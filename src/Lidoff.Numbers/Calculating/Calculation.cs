using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Calculating;

/// <summary>
/// One engineering number as the rest of the program sees it: no generic types, doubles and uncertain values only.
/// Calculations derive from <see cref="Calculation{TSelf}"/>.
/// </summary>
public abstract class Calculation
{
    /// <summary>How many draws are made where nothing else is said.</summary>
    public const int DefaultSamples = 100_000;

    /// <summary>Name, inputs, source, maturity.</summary>
    public abstract CalculationInfo Info { get; }

    /// <summary>The value at exact SI inputs, in the order of <see cref="CalculationInfo.Inputs"/>.</summary>
    public abstract double Nominal(ReadOnlySpan<double> inputs);

    /// <summary>The partial derivative by each input at exact SI inputs.</summary>
    public abstract double[] Slopes(ReadOnlySpan<double> inputs);

    /// <summary>
    /// The value with its doubt, by first order and by Monte Carlo. The same inputs, seed and number of samples give the
    /// same bits on every machine, whatever <paramref name="threads"/> is.
    /// </summary>
    public CalculationValue Run(
        IReadOnlyList<Uncertain> inputs, ulong seed = 1, int samples = DefaultSamples, CorrelationMatrix? correlations = null, int threads = 1)
    {
        Guard.NotNull(inputs);
        Guard.That(inputs.Count == Info.Inputs.Count, "one value for each input of " + Info.Name);
        Guard.That(samples > 0 && threads > 0, "at least one sample and one thread");
        Guard.That(correlations is null || correlations.Count == inputs.Count, "a correlation matrix of as many inputs");
        return CalculationRun.Of(this, inputs, seed, samples, correlations, threads);
    }

    /// <summary>The value at many points at once: <paramref name="columns"/> holds one column of <c>values.Length</c> for each input.</summary>
    internal abstract void Evaluate(ReadOnlySpan<double> columns, Span<double> values);
}
