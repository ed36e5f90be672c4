using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>The value of a sine at a random moment; standard deviation is the half-width over √2.</summary>
internal sealed record ArcsineShape(double Low, double High) : Shape
{
    public override double Mean => (Low / 2) + (High / 2);

    public override double U => (High - Low) / Math.Sqrt(8);

    public override double Quantile(double p) =>
        Math.FusedMultiplyAdd(-Elementary.Cos(Math.PI * p), (High - Low) / 2, Mean);

    public override void Draw(ReadOnlySpan<double> first, ReadOnlySpan<double> second, Span<double> into)
    {
        for (var i = 0; i < into.Length; i += Lanes.Count)
            Lanes.Fma(-Lanes.Cos(Math.PI * Lanes.Load(first, i)), (High - Low) / 2, Mean).Store(into, i);
    }
}
