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
        double[] u = new double[parts.Count], dof = new double[parts.Count], squares = new double[parts.Count];
        for (var i = 0; i < u.Length; i++)
        {
            (u[i], dof[i]) = parts[i];
            squares[i] = u[i] * u[i];
        }

        return Effective(Math.Sqrt(Statistics.Sum(squares)), u, dof);
    }

    /// <summary>Degrees of freedom that a relative doubt <paramref name="share"/> of an uncertainty stands for (GUM G.4.2): ½·share⁻².</summary>
    public static double DofOfDoubt(double share) => 0.5 / (Guard.Positive(share) * share);

    // Relative to the combined uncertainty, so that tiny SI values do not underflow in the fourth power.
    internal static double Effective(double combined, ReadOnlySpan<double> u, ReadOnlySpan<double> dof)
    {
        if (combined == 0) return double.PositiveInfinity;
        var terms = new double[u.Length];
        for (var i = 0; i < terms.Length; i++)
        {
            var square = u[i] / combined * (u[i] / combined);
            terms[i] = square * square / dof[i];
        }

        return 1 / Statistics.Sum(terms);
    }
}
