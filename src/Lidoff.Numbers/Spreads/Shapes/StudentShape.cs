using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Student's t with a scale: what a mean of few readings leaves open.</summary>
internal sealed record StudentShape(double Centre, double Scale, double Dof) : Shape
{
    public override double Mean => Centre;

    public override double U => Scale;

    public override bool TakesTwo => !double.IsInfinity(Dof);

    public override double Quantile(double p) => Math.FusedMultiplyAdd(Scale, StudentT.Quantile(p, Dof), Centre);

    // Bailey (Mathematics of Computation 62, 1994): √(ν(u^(−2/ν) − 1))·cos 2πv is exactly t. Infinite ν is the normal.
    public override void Draw(ReadOnlySpan<double> first, ReadOnlySpan<double> second, Span<double> into)
    {
        for (var i = 0; i < into.Length; i += Lanes.Count)
        {
            var t = double.IsInfinity(Dof)
                ? NormalDistribution.QuantileOf(Lanes.Load(first, i))
                : Lanes.Sqrt(Dof * Elementary.Expm1Of(-2 / Dof * Lanes.Log(Lanes.Load(first, i)))) * Lanes.Cos(2 * Math.PI * Lanes.Load(second, i));
            Lanes.Fma(Scale, t, Centre).Store(into, i);
        }
    }
}
