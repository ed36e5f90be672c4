namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>One value, no spread.</summary>
internal sealed record ExactShape(double Value) : Shape
{
    public override double Mean => Value;

    public override double U => 0;

    public override double Quantile(double p) => Value;

    public override void Draw(ReadOnlySpan<double> first, ReadOnlySpan<double> second, Span<double> into) => into.Fill(Value);
}
