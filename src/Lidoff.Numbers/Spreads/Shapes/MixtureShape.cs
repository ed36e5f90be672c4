namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Several alternatives with weights; which one holds is drawn before the value.</summary>
internal sealed record MixtureShape : Shape
{
    public MixtureShape(double[] weights, Shape[] alternatives)
    {
        var sum = Statistics.Sum(weights);
        Weights = [.. weights.Select(w => w / sum)];
        Alternatives = alternatives;
        Mean = Statistics.Sum([.. Weights.Zip(alternatives, (w, a) => w * a.Mean)]);
        U = Math.Sqrt(Statistics.Sum([.. Weights.Zip(alternatives, (w, a) => w * ((a.U * a.U) + ((a.Mean - Mean) * (a.Mean - Mean))))]));
    }

    public double[] Weights { get; }

    public Shape[] Alternatives { get; }

    public override double Mean { get; }

    public override double U { get; }

    public override bool TakesTwo => Alternatives.Any(a => a.TakesTwo);

    /// <summary>Which alternative a uniform picks: the first whose summed weight exceeds it.</summary>
    public int Pick(double p)
    {
        var below = 0.0;
        for (var i = 0; i < Weights.Length - 1; i++)
        {
            below += Weights[i];
            if (p < below) return i;
        }

        return Weights.Length - 1;
    }

    public override double Quantile(double p) =>
        throw new InvalidOperationException("a mixture draws its identity first; it has no quantile of one uniform");
}
