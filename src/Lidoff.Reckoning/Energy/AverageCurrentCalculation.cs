namespace Lidoff.Reckoning.Energy;

/// <summary>The mean current of a sleeping load with events on top.</summary>
public sealed class AverageCurrentCalculation : Calculation<AverageCurrentCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "average_current",
        "The mean current of a sleeping load with events on top.",
        Units.Microampere,
        [
            Given.Of("sleep_current", Units.Microampere, 0, 10000000.0, "current between events"),
            Given.Of("event_charge", ReckonUnits.Microcoulomb, 0, 1000000000.0, "charge of one event above the sleeping current"),
            Given.Of("event_rate", ReckonUnits.PerHour, 0, 36000000.0, "events per hour"),
        ],
        "Charge balance: sleeping current plus charge of an event times events per second",
        Maturity.Checked,
        []);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] + x[1] * x[2];
}
