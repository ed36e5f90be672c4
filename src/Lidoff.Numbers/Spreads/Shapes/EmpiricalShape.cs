namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Measured values, each as likely as the other. Sorted, so that equal sets draw alike whatever their order.</summary>
internal sealed record EmpiricalShape : Shape
{
    private readonly double[] sorted;

    public EmpiricalShape(double[] values)
    {
        sorted = values;
        Array.Sort(sorted);
        Mean = Statistics.Mean(sorted);
        U = sorted.Length > 1 ? Statistics.StandardDeviation(sorted) : 0;
    }

    public override double Mean { get; }

    public override double U { get; }

    public override double Quantile(double p) => sorted[Math.Min((int)(p * sorted.Length), sorted.Length - 1)];
}
