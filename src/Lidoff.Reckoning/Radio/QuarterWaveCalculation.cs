namespace Lidoff.Reckoning.Radio;

/// <summary>A quarter of the wavelength in air.</summary>
public sealed class QuarterWaveCalculation : Calculation<QuarterWaveCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "quarter_wave",
        "A quarter of the wavelength in air.",
        Units.Millimetre,
        [
            Given.Of("frequency", Units.Megahertz, 1, 100000, "frequency"),
        ],
        "Speed of light (exact in the SI) over four times the frequency",
        Maturity.Checked,
        [
            "Plastic, skin and copper nearby make the antenna shorter.",
            "Transmit only within what is licence-exempt where you are, or in a shielded box.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        Nature.SpeedOfLight / (4 * x[0]);
}
