namespace Lidoff.Reckoning.Converters;

/// <summary>The efficiency of a synchronous step-down converter from its parts.</summary>
public sealed class BuckEfficiencyCalculation : Calculation<BuckEfficiencyCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "buck_efficiency",
        "The efficiency of a synchronous step-down converter from its parts.",
        Units.Percent,
        BuckLosses.Inputs,
        "Converter efficiency application note of a power-chip maker: loss terms of a synchronous step-down converter " +
            "in continuous conduction",
        Maturity.Checked,
        [
            "Continuous conduction only: at light load converters skip pulses and lose less.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T given = x[1] * x[2];
        return given / (given + BuckLosses.Total(x));
    }
}
