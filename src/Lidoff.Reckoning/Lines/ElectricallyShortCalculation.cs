namespace Lidoff.Reckoning.Lines;

/// <summary>The length below which a wire needs no matching.</summary>
public sealed class ElectricallyShortCalculation : Calculation<ElectricallyShortCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "electrically_short",
        "The length below which a wire needs no matching.",
        Units.Millimetre,
        [
            Given.Of("rise_time", Units.Nanosecond, 0.01, 1000000.0, "rise time of the signal"),
            Given.Of("delay", ReckonUnits.PicosecondPerMillimetre, 3.3, 20, "delay of the wire", 6),
            Given.Of("share", Units.One, 1, 10, "rise time over delay of the wire: 6 strict, 2 lenient", 6),
        ],
        "Rule of thumb: a wire is short when its delay is under a sixth (lenient: half) of the rise time",
        Maturity.Experimental,
        ["The values it was compared with are from memory; look them up before leaning on it."]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / (x[1] * x[2]);
}
