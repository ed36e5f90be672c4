namespace Lidoff.Reckoning.Energy;

/// <summary>The resting voltage of a lithium polymer cell at a state of charge.</summary>
public sealed class OpenCircuitVoltageCalculation : Calculation<OpenCircuitVoltageCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "open_circuit_voltage",
        "The resting voltage of a lithium polymer cell at a state of charge.",
        Units.Volt,
        [
            Given.Of("charge", Units.Percent, 0, 100, "state of charge"),
        ],
        "Chen and Rincon-Mora, IEEE Trans. Energy Conversion 21(2), 2006: 850 mAh polymer cell charged to 4.1 V",
        Maturity.Checked,
        [
            "One cell of 2006 that ends at 4.10 V; cells charged to 4.2 V and above lie higher when full.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        ChenCell.OpenCircuit(x[0]);
}
