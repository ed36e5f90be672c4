namespace Lidoff.Reckoning.Energy;

/// <summary>
/// How long a cell lasts under a sleeping load with events on top. Usable charge over mean current. What is not said is
/// not assumed: no reserve and no self-discharge are taken off by default.
/// </summary>
public sealed class RuntimeCalculation : Calculation<RuntimeCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "runtime",
        "How long a cell lasts under a sleeping load with events on top.",
        Units.Hour,
        [
            Given.Of("capacity", Units.MilliampereHour, 0.01, 1000000.0, "charge of the full cell"),
            Given.Of("sleep_current", Units.Microampere, 0.001, 10000000.0, "current between events, regulator and divider included"),
            Given.Of("event_charge", ReckonUnits.Microcoulomb, 0, 1000000000.0, "charge of one event above the sleeping current", 0),
            Given.Of("event_rate", ReckonUnits.PerHour, 0, 36000000.0, "events per hour", 0),
            Given.Of("reserve", Units.Percent, 0, 95, "share of the capacity that cannot be used (cut-off, cold, age)", 0),
            Given.Of("self_discharge", ReckonUnits.PercentPerMonth, 0, 50, "share of the capacity that leaks away in a month", 0),
        ],
        "Charge balance: usable charge over the sum of mean currents, self-discharge taken as a steady current",
        Maturity.Checked,
        [
            "The load is taken as steady over the whole life; cold, age and pulse load can halve a small cell's charge.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T capacity = x[0], sleep = x[1], eventCharge = x[2], eventRate = x[3], reserve = x[4], selfDischarge = x[5];
        return capacity * (1 - reserve) / (sleep + eventCharge * eventRate + capacity * selfDischarge);
    }
}
