using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Spreads;

/// <summary>
/// A straight line y = <see cref="Intercept"/> + <see cref="Slope"/>·(x − <see cref="Origin"/>) through points by least
/// squares, all points alike, with what its scatter says about the doubt of both (GUM H.3).
/// </summary>
public sealed record StraightLine
{
    private StraightLine()
    {
    }

    /// <summary>Where the intercept is taken, in the unit of x.</summary>
    public required double Origin { get; init; }

    /// <summary>Height of the line at the origin.</summary>
    public required double Intercept { get; init; }

    /// <summary>Rise of the line.</summary>
    public required double Slope { get; init; }

    /// <summary>Standard uncertainty of the intercept.</summary>
    public required double UIntercept { get; init; }

    /// <summary>Standard uncertainty of the slope.</summary>
    public required double USlope { get; init; }

    /// <summary>Correlation coefficient of intercept and slope, −1 to 1.</summary>
    public required double Correlation { get; init; }

    /// <summary>Standard deviation of the points about the line (divisor n − 2).</summary>
    public required double ResidualSpread { get; init; }

    /// <summary>Degrees of freedom, n − 2.</summary>
    public required int Dof { get; init; }

    /// <summary>Share of the points' scatter that the line explains, 0 to 1 (R²).</summary>
    public required double Explained { get; init; }

    /// <summary>The line through at least three points whose x are not all the same.</summary>
    public static StraightLine Fit(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double origin = 0)
    {
        Guard.That(x.Length == y.Length && x.Length > 2, "two columns of the same length, at least three points");
        double meanX = Statistics.Mean(x), meanY = Statistics.Mean(y);
        var squares = Statistics.SumOfProducts(x, x);
        Guard.That(squares > 0, "points that do not stand above each other");
        var slope = Statistics.SumOfProducts(x, y) / squares;

        var residuals = new double[x.Length];
        for (var i = 0; i < residuals.Length; i++) residuals[i] = y[i] - meanY - (slope * (x[i] - meanX));
        var left = Statistics.SumOfProducts(residuals, residuals);
        double whole = Statistics.SumOfProducts(y, y), spread = Math.Sqrt(left / (x.Length - 2));
        double uSlope = spread / Math.Sqrt(squares), arm = meanX - origin, uMean = spread / Math.Sqrt(x.Length);
        var uIntercept = Math.Sqrt((uMean * uMean) + (arm * arm * uSlope * uSlope));
        return new()
        {
            Origin = origin,
            Slope = slope,
            Intercept = Math.FusedMultiplyAdd(-slope, arm, meanY),
            UIntercept = uIntercept,
            USlope = uSlope,
            Correlation = uIntercept == 0 ? 0 : -arm * uSlope / uIntercept,
            ResidualSpread = spread,
            Dof = x.Length - 2,
            Explained = whole == 0 ? 1 : 1 - (left / whole),
        };
    }

    /// <summary>The height of the line at <paramref name="x"/> and its standard uncertainty (of the line, not of a further point).</summary>
    public (double Value, double U) At(double x)
    {
        var arm = x - Origin;
        double a = UIntercept, b = arm * USlope;
        return (Math.FusedMultiplyAdd(Slope, arm, Intercept), Math.Sqrt(Math.Max(0, (a * a) + (b * b) + (2 * Correlation * a * b))));
    }
}
