namespace Lidoff.Reckoning.Energy;

/// <summary>
/// The voltage of a lithium polymer cell some time into a steady pulse of current. Series resistance at once, then two
/// slow terms; other capacities are scaled from the 850 mAh cell of the paper.
/// </summary>
public sealed class PulseVoltageCalculation : Calculation<PulseVoltageCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "pulse_voltage",
        "The voltage of a lithium polymer cell some time into a steady pulse of current.",
        Units.Volt,
        [
            Given.Of("capacity", Units.MilliampereHour, 1, 100000.0, "charge of the full cell"),
            Given.Of("charge", Units.Percent, 2, 100, "state of charge, taken as constant during the pulse"),
            Given.Of("current", Units.Milliampere, 0, 100000.0, "current of the pulse"),
            Given.Of("duration", Units.Second, 0, 3600, "time since the pulse began"),
        ],
        "Chen and Rincon-Mora, IEEE Trans. Energy Conversion 21(2), 2006; resistances scaled inversely with capacity",
        Maturity.Checked,
        [
            "Very small cells have more resistance than scaling tells; measure the sag where a brown-out matters.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        // The paper's cell at the same rate behaves alike: current scaled down by the ratio of capacities.
        T current = x[2] * ChenCell.Capacity / x[0];
        T fast = 1 - T.Exp(-x[3] / (ChenCell.FastResistance(x[1]) * ChenCell.FastCapacitance(x[1])));
        T slow = 1 - T.Exp(-x[3] / (ChenCell.SlowResistance(x[1]) * ChenCell.SlowCapacitance(x[1])));
        T resistance = ChenCell.SeriesResistance(x[1]) + ChenCell.FastResistance(x[1]) * fast + ChenCell.SlowResistance(x[1]) * slow;
        return ChenCell.OpenCircuit(x[1]) - current * resistance;
    }
}
