using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Rectangular between two limits; standard deviation is the width over √12.</summary>
internal sealed record UniformShape(double Low, double High) : Shape
{
    public override double Mean => (Low / 2) + (High / 2);

    public override double U => (High - Low) / Math.Sqrt(12);

    public override double Quantile(double p) => Math.FusedMultiplyAdd(High - Low, p, Low);

    public override void Draw(ReadOnlySpan<double> first, ReadOnlySpan<double> second, Span<double> into)
    {
        for (var i = 0; i < into.Length; i += Lanes.Count)
            Lanes.Fma(High - Low, Lanes.Load(first, i), Low).Store(into, i);
    }
}
