using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Normal.</summary>
internal sealed record NormalShape(double Centre, double Spread) : Shape
{
    public override double Mean => Centre;

    public override double U => Spread;

    public override double Quantile(double p) => Math.FusedMultiplyAdd(Spread, NormalDistribution.Quantile(p), Centre);

    public override void Draw(ReadOnlySpan<double> first, ReadOnlySpan<double> second, Span<double> into)
    {
        for (var i = 0; i < into.Length; i += Lanes.Count)
            Lanes.Fma(Spread, NormalDistribution.QuantileOf(Lanes.Load(first, i)), Centre).Store(into, i);
    }
}
