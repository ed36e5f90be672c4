namespace Lidoff.Reckoning.Measuring;

/// <summary>The viscosity of an oil or glue from the fall of a ball, against a known liquid.</summary>
public sealed class FallingBallViscosityCalculation : Calculation<FallingBallViscosityCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "falling_ball_viscosity",
        "The viscosity of an oil or glue from the fall of a ball, against a known liquid.",
        ReckonUnits.MillipascalSecond,
        [
            Given.Of("known", ReckonUnits.MillipascalSecond, 0.1, 1000000.0, "viscosity of the known liquid"),
            Given.Of("time", Units.Second, 0.1, 100000.0, "fall in the unknown liquid"),
            Given.Of("time_known", Units.Second, 0.1, 100000.0, "fall in the known liquid"),
            Given.Of("ball", ReckonUnits.KilogramPerCubicMetre, 100, 25000, "density of the ball"),
            Given.Of("density", ReckonUnits.KilogramPerCubicMetre, 100, 20000, "density of the unknown liquid"),
            Given.Of("density_known", ReckonUnits.KilogramPerCubicMetre, 100, 20000, "density of the known liquid"),
        ],
        "NIST Technical Note 1900, example E3",
        Maturity.Checked,
        [
            "Glues and solvents: ventilate, gloves, read the safety data sheet.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] * x[1] * (x[3] - x[4]) / (x[2] * (x[3] - x[5]));
}
