namespace Lidoff.Reckoning.Conductors;

/// <summary>The current that melts a copper conductor within seconds, before it can lose heat.</summary>
public sealed class FusingCurrentBriefCalculation : Calculation<FusingCurrentBriefCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "fusing_current_brief",
        "The current that melts a copper conductor within seconds, before it can lose heat.",
        Units.Ampere,
        [
            Given.Of("area", Units.SquareMillimetre, 1e-05, 100, "cross-section of the copper"),
            Given.Of("time", Units.Second, 0.001, 10, "how long it flows"),
            Given.Of("ambient", Units.DegreeCelsius, -40, 200, "temperature before", 40),
        ],
        "Onderdonk: area in circular mils x sqrt(log10((1083 - Ta) / (234 + Ta) + 1) / (33 t))",
        Maturity.Checked,
        [
            "Heat that leaves is neglected: above ten seconds it understates. Never a rating; try nothing that glows near " +
                "a cell.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T>
    {
        // A circular mil is the area of a circle of one mil, 25.4 micrometres across.
        T circularMils = x[0] / (Math.PI / 4 * 25.4e-6 * 25.4e-6);
        T ambient = x[2] - 273.15;
        T decades = T.Log((1083 - ambient) / (234 + ambient) + 1) / Nature.LogOfTen;
        return circularMils * T.Sqrt(decades / (33 * x[1]));
    }
}
