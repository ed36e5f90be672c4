namespace Lidoff.Reckoning.Energy;

/// <summary>
/// The state of charge of a rested lithium polymer cell from its voltage. The inverse of the open-circuit curve, by
/// halving and one Newton step, which also carries the derivative.
/// </summary>
public sealed class StateOfChargeCalculation : Calculation<StateOfChargeCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "state_of_charge",
        "The state of charge of a rested lithium polymer cell from its voltage.",
        Units.Percent,
        [
            Given.Of("voltage", Units.Volt, 2.66, 4.1, "voltage after an hour without load"),
        ],
        "Chen and Rincon-Mora, IEEE Trans. Energy Conversion 21(2), 2006, inverted",
        Maturity.Checked,
        [
            "Between 3.65 and 3.8 V the curve is flat: 10 mV are several per cent of charge.",
            "Do not charge a cell that is swollen, dented, hot or below its maker's least voltage.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        ChenCell.ChargeAt(x[0]);
}
