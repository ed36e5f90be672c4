namespace Lidoff.Reckoning.Energy;

/// <summary>
/// The mean current that emptied a cell in a known time. Turns a date of death into a budget that can be compared with
/// the data sheets.
/// </summary>
public sealed class CurrentFromLifetimeCalculation : Calculation<CurrentFromLifetimeCalculation>, IFormula
{
    /// <inheritdoc/>
    public override CalculationInfo Info { get; } = new(
        "current_from_lifetime",
        "The mean current that emptied a cell in a known time.",
        Units.Microampere,
        [
            Given.Of("capacity", Units.MilliampereHour, 0.01, 1000000.0, "charge that was used up"),
            Given.Of("lifetime", Units.Hour, 0.1, 1000000.0, "how long it lasted"),
        ],
        "Charge balance",
        Maturity.Checked,
        [
            "Says nothing of when the charge went: one bad week and a steady drain look the same.",
        ]);

    /// <inheritdoc/>
    public static T Evaluate<T>(ReadOnlySpan<T> x)
        where T : struct, IReal<T> =>
        x[0] / x[1];
}
