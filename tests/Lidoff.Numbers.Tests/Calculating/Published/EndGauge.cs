using Lidoff.Numbers.Calculating;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Reals;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Numbers.Tests.Calculating.Published;

/// <summary>
/// JCGM 100:2008 annex H.1: calibration of an end gauge, l = lS + d − lS(δα·θ + αS·δθ). θ is the mean temperature deviation
/// plus a cyclic one, d the mean difference plus two comparator effects.
/// </summary>
public sealed class EndGauge : Calculation<EndGauge>, IFormula
{
    public override CalculationInfo Info { get; } = new(
        "end_gauge", "Length of an end gauge at 20 °C.", Units.Metre,
        [
            new("ls", Units.Metre, 0, 1, "standard"), new("d", Units.Metre, -1, 1, "difference"),
            new("d1", Units.Metre, -1, 1, "comparator, random"), new("d2", Units.Metre, -1, 1, "comparator, systematic"),
            new("alpha", Units.One, 0, 1, "expansion"), new("theta", Units.One, -100, 100, "mean deviation"),
            new("cycle", Units.One, -100, 100, "cyclic deviation"), new("delta_alpha", Units.One, -1, 1, "difference of expansion"),
            new("delta_theta", Units.One, -100, 100, "difference of temperature"),
        ],
        "JCGM 100:2008, annex H.1", Maturity.Checked, []);

    /// <summary>The inputs as the annex states them.</summary>
    public static Uncertain[] Inputs { get; } =
    [
        Uncertain.Normal(50.000623e-3, 25e-9, dof: 18), Uncertain.Normal(215e-9, 13e-9 / Math.Sqrt(5), dof: 24),
        Uncertain.Normal(0, 10e-9 / 2.571, dof: 5), Uncertain.Normal(0, 20e-9 / 3, dof: 8),
        Uncertain.Uniform(9.5e-6, 13.5e-6), Uncertain.Normal(-0.1, 0.2), Uncertain.Arcsine(-0.5, 0.5),
        Uncertain.Uniform(-1e-6, 1e-6, dof: 50), Uncertain.Uniform(-0.05, 0.05, dof: 2),
    ];

    public static T Evaluate<T>(ReadOnlySpan<T> x) where T : struct, IReal<T> =>
        x[0] + x[1] + x[2] + x[3] - (x[0] * ((x[7] * (x[5] + x[6])) + (x[4] * x[8])));
}
