namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Normal.</summary>
internal sealed record NormalShape(double Centre, double Spread) : Shape
{
    public override double Mean => Centre;

    public override double U => Spread;

    public override double Quantile(double p) => Math.FusedMultiplyAdd(Spread, NormalDistribution.Quantile(p), Centre);
}
