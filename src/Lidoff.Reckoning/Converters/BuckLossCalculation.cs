namespace Lidoff.Reckoning.Converters;

/// <summary>The power a synchronous step-down converter turns into heat.</summary>
public sealed class BuckLossCalculation : Calculation<BuckLossCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "buck_loss",
        "The power a synchronous step-down converter turns into heat.",
        Units.Milliwatt,
        BuckLosses.Inputs,
        "Converter efficiency application note of a power-chip maker: loss terms of a synchronous step-down converter " +
            "in continuous conduction",
        Maturity.Checked,
        [
            "Continuous conduction only: at light load converters skip pulses and lose less.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        BuckLosses.Total(x);
}
