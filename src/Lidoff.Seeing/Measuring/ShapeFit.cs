namespace Lidoff.Seeing.Measuring;

/// <summary>Weighted least squares of a shape's coefficients, each drawn towards zero by its prior.</summary>
internal sealed class ShapeFit
{
    private readonly double[] coefficients;

    private ShapeFit(double[] coefficients, double misfit)
    {
        this.coefficients = coefficients;
        Misfit = misfit;
    }

    /// <summary>χ² of the references about the shape, priors included; degrees of freedom: references less one.</summary>
    public double Misfit { get; }

    /// <summary>Fits.</summary>
    /// <param name="shape">Which coefficients are free.</param>
    /// <param name="factors">Factors of each reference.</param>
    /// <param name="values">ln(px/mm) of each reference, brought down to the board.</param>
    /// <param name="u">Standard uncertainty of each.</param>
    public static ShapeFit Of(PictureShape shape, IReadOnlyList<double[]> factors, IReadOnlyList<double> values, IReadOnlyList<double> u)
    {
        const int n = PictureShape.Count;
        var priors = shape.Priors();
        var information = new double[n, n];
        var right = new double[n];
        for (var j = 0; j < n; j++) information[j, j] = 1 / (priors[j] * priors[j]);
        for (var i = 0; i < values.Count; i++)
        {
            var weight = 1 / (u[i] * u[i]);
            for (var j = 0; j < n; j++)
            {
                right[j] += weight * factors[i][j] * values[i];
                for (var k = 0; k < n; k++) information[j, k] += weight * factors[i][j] * factors[i][k];
            }
        }

        // The diagonal holds every prior, so the matrix is positive definite whatever the references are.
        var solution = PositiveMatrix.Solve(PositiveMatrix.Factor(information)!, right);
        var misfit = 0.0;
        for (var i = 0; i < values.Count; i++)
        {
            var rest = (values[i] - Product(factors[i], solution)) / u[i];
            misfit += rest * rest;
        }

        for (var j = 1; j < n; j++) misfit += solution[j] * solution[j] / (priors[j] * priors[j]);
        return new(solution, misfit);
    }

    /// <summary>One coefficient of the shape.</summary>
    public double Coefficient(int index) => coefficients[index];

    private static double Product(double[] a, double[] b)
    {
        var sum = 0.0;
        for (var j = 0; j < a.Length; j++) sum += a[j] * b[j];
        return sum;
    }
}
