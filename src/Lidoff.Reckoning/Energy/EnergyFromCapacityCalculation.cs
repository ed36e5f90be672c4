namespace Lidoff.Reckoning.Energy;

/// <summary>The energy of a cell from its charge and nominal voltage.</summary>
public sealed class EnergyFromCapacityCalculation : Calculation<EnergyFromCapacityCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "energy_from_capacity",
        "The energy of a cell from its charge and nominal voltage.",
        Units.WattHour,
        [
            Given.Of("capacity", Units.MilliampereHour, 0.01, 1000000.0, "charge of the full cell"),
            Given.Of("voltage", Units.Volt, 0.5, 1000, "mean voltage over the discharge, often the nominal one"),
        ],
        "Charge times mean voltage",
        Maturity.Checked,
        [
            "Transport rules sort cells by this figure; ask the carrier, local rules decide.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * x[1];
}
