namespace Lidoff.Reckoning.Energy;

/// <summary>
/// How long a full lithium polymer cell gives a steady current before it falls to a cut-off voltage. The paper's circuit
/// is stepped over the state of charge, finer towards empty; each step is exact for frozen parameters.
/// </summary>
public sealed class DischargeTimeCalculation : Calculation<DischargeTimeCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "discharge_time",
        "How long a full lithium polymer cell gives a steady current before it falls to a cut-off voltage.",
        Units.Hour,
        [
            Given.Of("capacity", Units.MilliampereHour, 1, 100000.0, "charge of the full cell"),
            Given.Of("current", Units.Milliampere, 0.001, 100000.0, "steady current; up to about twice the capacity in an hour"),
            Given.Of("cut_off", Units.Volt, 2.7, 4.0, "voltage at which the device stops", 3.0),
        ],
        "Chen and Rincon-Mora, IEEE Trans. Energy Conversion 21(2), 2006; resistances scaled inversely with capacity",
        Maturity.Checked,
        [
            "A new cell at room temperature; cold, age and very small size cost more.",
            "Below its maker's cut-off a lithium cell is damaged and may be unsafe to charge again.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        ChenCell.DischargeTime(x[1] * ChenCell.Capacity / x[0], x[2]);
}
