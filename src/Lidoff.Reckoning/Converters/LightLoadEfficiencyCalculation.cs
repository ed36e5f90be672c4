namespace Lidoff.Reckoning.Converters;

/// <summary>The efficiency of a small step-down converter down to microamperes.</summary>
public sealed class LightLoadEfficiencyCalculation : Calculation<LightLoadEfficiencyCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "light_load_efficiency",
        "The efficiency of a small step-down converter down to microamperes.",
        Units.Percent,
        LightLoad.Inputs,
        "Loss model of a pulse-skipping converter: idle current, one resistance, and a share of the power given",
        Maturity.Checked,
        [
            "Three numbers stand for a whole converter; take the curve of its data sheet where there is one.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        T given = x[1] * x[2];
        return given / LightLoad.PowerTaken(x);
    }
}
