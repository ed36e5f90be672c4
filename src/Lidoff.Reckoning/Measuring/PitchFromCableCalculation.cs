namespace Lidoff.Reckoning.Measuring;

/// <summary>The pitch of a flat flexible cable from its width.</summary>
public sealed class PitchFromCableCalculation : Calculation<PitchFromCableCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "pitch_from_cable",
        "The pitch of a flat flexible cable from its width.",
        Units.Millimetre,
        [
            Given.Of("width", Units.Millimetre, 1, 500, "width over all"),
            Given.Of("ways", Units.One, 2, 200, "conductors"),
        ],
        "Flat cables leave about one pitch at each edge: width is nearly (n + 1) pitches",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / (x[1] + 1);
}
