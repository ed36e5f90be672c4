using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>Effective degrees of freedom of a combined uncertainty (GUM G.4.1).</summary>
public static class WelchSatterthwaite
{
    /// <summary>
    /// u⁴ / Σ(uᵢ⁴/νᵢ) of independent parts given as standard uncertainties and degrees of freedom; infinite when no part
    /// has finite ones. Not rounded: the GUM truncates to a whole number before using a table.
    /// </summary>
    public static double Effective(IReadOnlyList<(double U, double Dof)> parts)
    {
        Guard.NotNull(parts);
        return Effective(Math.Sqrt(Statistics.Sum([.. parts.Select(p => p.U * p.U)])), parts);
    }

    /// <summary>Degrees of freedom that a relative doubt <paramref name="share"/> of an uncertainty stands for (GUM G.4.2): ½·share⁻².</summary>
    public static double DofOfDoubt(double share) => 0.5 / (Guard.Positive(share) * share);

    internal static double Effective(double combined, IReadOnlyList<double> slopes, IReadOnlyList<Uncertain> inputs) =>
        Effective(combined, [.. inputs.Select((input, i) => (input.U == 0 ? 0 : Math.Abs(slopes[i]) * input.U, input.Dof))]);

    // Relative to the combined uncertainty, so that tiny SI values do not underflow in the fourth power.
    private static double Effective(double combined, IReadOnlyList<(double U, double Dof)> parts)
    {
        if (combined == 0) return double.PositiveInfinity;
        var sum = Statistics.Sum([.. parts.Select(p => Ratio(p.U / combined) / p.Dof)]);
        return 1 / sum;

        static double Ratio(double r) => r * r * r * r;
    }
}
