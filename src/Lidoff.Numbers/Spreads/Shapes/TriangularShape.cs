using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Triangular between two limits with a mode anywhere between them.</summary>
internal sealed record TriangularShape(double Low, double Mode, double High) : Shape
{
    public override double Mean => (Low / 3) + (Mode / 3) + (High / 3);

    // Variance (a² + b² + c² − ab − ac − bc)/18, written with differences so that nothing cancels.
    public override double U
    {
        get
        {
            double left = Mode - Low, right = High - Mode;
            return Math.Sqrt(((left * left) + (left * right) + (right * right)) / 18);
        }
    }

    public override double Quantile(double p)
    {
        double width = High - Low, left = Mode - Low;
        return p * width < left
            ? Low + Math.Sqrt(p * width * left)
            : High - Math.Sqrt((1 - p) * width * (High - Mode));
    }

    public override void Draw(ReadOnlySpan<double> first, ReadOnlySpan<double> second, Span<double> into)
    {
        double width = High - Low, left = Mode - Low, right = High - Mode;
        for (var i = 0; i < into.Length; i += Lanes.Count)
        {
            var p = Lanes.Load(first, i);
            Lanes rising = Low + Lanes.Sqrt(p * width * left), falling = High - Lanes.Sqrt((1.0 - p) * width * right);
            Lanes.IfLess(p * width, left, rising, falling).Store(into, i);
        }
    }
}
