namespace Lidoff.Reckoning.Sensors;

/// <summary>The noise of a sensor behind a Butterworth low-pass.</summary>
public sealed class SensorNoiseCalculation : Calculation<SensorNoiseCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "sensor_noise",
        "The noise of a sensor behind a Butterworth low-pass.",
        ReckonUnits.MilliGravity,
        [
            Given.Of("density", ReckonUnits.MicroGravityPerRootHertz, 0.01, 1000000.0, "noise density"),
            Given.Of("bandwidth", Units.Hertz, 0.001, 1000000.0, "corner of the low-pass"),
            Given.Of("poles", Units.One, 1, 100, "poles of the low-pass; 100 is nearly a brick wall", 1),
        ],
        "Noise bandwidth of an n-pole Butterworth: (pi / 2n) / sin(pi / 2n)",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T angle = Math.PI / 2 / x[2];
        return x[0] * T.Sqrt(angle / T.Sin(angle) * x[1]);
    }
}
