using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Calculating.Published;

/// <summary>JCGM 100:2008 annex H.2: resistance and reactance from five simultaneous readings of V, I and φ that move together.</summary>
public sealed class ImpedanceTests
{
    private static readonly double[] Voltage = [5.007, 4.994, 5.005, 4.990, 4.999];
    private static readonly double[] Current = [19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3];
    private static readonly double[] Phase = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];

    [Fact]
    public void Means_spreads_and_correlations_match_table_H2()
    {
        Assert.Equal(4.9990, Statistics.Mean(Voltage), 0.00005);
        Assert.Equal(19.6610e-3, Statistics.Mean(Current), 0.00005e-3);
        Assert.Equal(1.04446, Statistics.Mean(Phase), 0.000005);
        Assert.Equal(0.0032, Statistics.StandardError(Voltage), 0.00005);
        Assert.Equal(0.0095e-3, Statistics.StandardError(Current), 0.00005e-3);
        Assert.Equal(0.00075, Statistics.StandardError(Phase), 0.000005);
        Assert.Equal(-0.36, Statistics.Correlation(Voltage, Current), 0.005);
        Assert.Equal(0.86, Statistics.Correlation(Voltage, Phase), 0.005);
        Assert.Equal(-0.65, Statistics.Correlation(Current, Phase), 0.005);
    }

    [Fact]
    public void Resistance_reactance_and_impedance_match_table_H3()
    {
        Check(new Resistance(), 127.732, 0.071);
        Check(new Reactance(), 219.847, 0.295, 0.0006);
        Check(new Impedance(), 254.260, 0.236);
    }

    [Fact]
    public void Ignoring_the_correlations_gives_the_wrong_spreads_of_table_H5()
    {
        Assert.Equal(0.195, new Resistance().Run(Inputs()).FirstOrderU, 0.0005);
        Assert.Equal(0.201, new Reactance().Run(Inputs()).FirstOrderU, 0.0005);
        Assert.Equal(0.204, new Impedance().Run(Inputs()).FirstOrderU, 0.0005);
    }

    // Printed to three digits; 0.295 for the reactance is 0.2956 in exact arithmetic (the annex carries rounded inputs).
    private static void Check(Calculation calculation, double expected, double u, double tolerance = 0.0005)
    {
        var correlations = CorrelationMatrix.Of(3,
        [
            (0, 1, Statistics.Correlation(Voltage, Current)), (0, 2, Statistics.Correlation(Voltage, Phase)), (1, 2, Statistics.Correlation(Current, Phase)),
        ]).Value;
        var value = calculation.Run(Inputs(), correlations: correlations);
        Assert.Equal(expected, value.Value, 0.0005);
        Assert.Equal(u, value.FirstOrderU, tolerance);
        Assert.Equal(value.FirstOrderU, value.U, 0.01 * value.FirstOrderU);
        Assert.Equal(1, value.Shares.Sum(s => s.Share), 1e-12);
    }

    private static Uncertain[] Inputs() =>
    [
        Uncertain.Normal(Statistics.Mean(Voltage), Statistics.StandardError(Voltage)),
        Uncertain.Normal(Statistics.Mean(Current), Statistics.StandardError(Current)),
        Uncertain.Normal(Statistics.Mean(Phase), Statistics.StandardError(Phase)),
    ];

    public sealed class Resistance : Calculation<Resistance>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("JCGM 100:2008, H.2", "v", "i", "phi");

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> => x[0] / x[1] * T.Cos(x[2]);
    }

    public sealed class Reactance : Calculation<Reactance>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("JCGM 100:2008, H.2", "v", "i", "phi");

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> => x[0] / x[1] * T.Sin(x[2]);
    }

    public sealed class Impedance : Calculation<Impedance>, IFormula
    {
        public override CalculationInfo Info { get; } = TestInfo.Of("JCGM 100:2008, H.2", "v", "i", "phi");

        public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> => x[0] / x[1];
    }
}
