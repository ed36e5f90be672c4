namespace Lidoff.Reckoning.Radio;

/// <summary>The loss between two small antennas in free space.</summary>
public sealed class PathLossCalculation : Calculation<PathLossCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "path_loss",
        "The loss between two small antennas in free space.",
        ReckonUnits.Decibel,
        [
            Given.Of("frequency", Units.Megahertz, 1, 100000, "frequency"),
            Given.Of("distance", Units.Metre, 0.1, 1000000.0, "distance of the antennas"),
        ],
        "Friis 1946: 20 log10(4 pi d f / c)",
        Maturity.Checked,
        [
            "A body in between costs 3 to 10 dB and more.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        20 / Nature.LogOfTen * T.Log(4 * Math.PI * x[1] * x[0] / Nature.SpeedOfLight);
}
