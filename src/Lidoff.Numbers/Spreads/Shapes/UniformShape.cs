namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Rectangular between two limits; standard deviation is the width over √12.</summary>
internal sealed record UniformShape(double Low, double High) : Shape
{
    public override double Mean => (Low / 2) + (High / 2);

    public override double U => (High - Low) / Math.Sqrt(12);

    public override double Quantile(double p) => Math.FusedMultiplyAdd(High - Low, p, Low);
}
