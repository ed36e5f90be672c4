namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>The value of a sine at a random moment; standard deviation is the half-width over √2.</summary>
internal sealed record ArcsineShape(double Low, double High) : Shape
{
    public override double Mean => (Low / 2) + (High / 2);

    public override double U => (High - Low) / Math.Sqrt(8);

    public override double Quantile(double p) =>
        Math.FusedMultiplyAdd(-Elementary.Cos(Math.PI * p), (High - Low) / 2, Mean);
}
