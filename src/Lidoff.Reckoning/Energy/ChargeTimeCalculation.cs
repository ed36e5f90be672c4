namespace Lidoff.Reckoning.Energy;

/// <summary>
/// How long a lithium polymer cell takes to charge at constant current, then at constant voltage. Lumped resistance of
/// the paper's cell; the second phase is an integral over charge on a grid that crowds towards its end.
/// </summary>
public sealed class ChargeTimeCalculation : Calculation<ChargeTimeCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "charge_time",
        "How long a lithium polymer cell takes to charge at constant current, then at constant voltage.",
        Units.Hour,
        [
            Given.Of("capacity", Units.MilliampereHour, 1, 100000.0, "charge of the full cell"),
            Given.Of("current", Units.Milliampere, 0.1, 100000.0, "charging current of the first phase"),
            Given.Of("start", Units.Percent, 0, 99, "state of charge at the start", 0),
            Given.Of("limit", Units.Volt, 3.9, 4.1, "voltage of the second phase; the model cell is full at 4.1 V", 4.1),
            Given.Of("end_current", Units.Percent, 1, 50, "charging ends at this share of the capacity per hour", 5),
        ],
        "Constant-current, constant-voltage charge of the Chen and Rincon-Mora cell (2006) with 0.171 ohm lumped " +
            "resistance",
        Maturity.Checked,
        [
            "Never charge a cell that is swollen, dented, wet, hot, of unknown chemistry or below its maker's least " +
                "voltage; charge nothing unattended; local rules come first.",
            "Chargers slow down in the cold and in the warm; a model of one 4.1 V cell is no charging instruction.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T scale = ChenCell.Capacity / x[0];
        T endCurrent = x[4] * ChenCell.Capacity / 3600;
        return ChenCell.ChargeTime(x[1] * scale, x[2], x[3], endCurrent);
    }
}
