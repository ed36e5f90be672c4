using Lidoff.Numbers.Reals;

namespace Lidoff.Numbers.Spreads.Shapes;

/// <summary>Uniform between limits that are themselves uniform within ± <paramref name="D"/>, moving against each other.</summary>
internal sealed record CurvilinearTrapezoidShape(double Low, double High, double D) : Shape
{
    public override double Mean => (Low / 2) + (High / 2);

    public override double U => Math.Sqrt(((High - Low) * (High - Low) / 12) + (D * D / 9));

    public override bool TakesTwo => true;

    public override void Draw(ReadOnlySpan<double> first, ReadOnlySpan<double> second, Span<double> into)
    {
        for (var i = 0; i < into.Length; i += Lanes.Count)
        {
            var low = Low + (D * ((2.0 * Lanes.Load(second, i)) - 1.0));
            Lanes.Fma(Low + High - (2.0 * low), Lanes.Load(first, i), low).Store(into, i);
        }
    }

    // Only correlated inputs ask for it: the distribution function of JCGM 101 6.4.3.2 inverted by halving.
    public override double Quantile(double p)
    {
        double low = Low - D, high = High + D;
        for (var step = 0; step < 100; step++)
        {
            var middle = low + ((high - low) / 2);
            if (Below(middle) < p) low = middle;
            else high = middle;
        }

        return high;
    }

    // Mean over the drawn lower limit of the uniform's own distribution function.
    private double Below(double x)
    {
        if (D == 0) return Math.Clamp((x - Low) / (High - Low), 0, 1);
        if (x > Mean) return 1 - Below(Low + High - x);

        // With half-width w uniform in [W − D, W + D] and t = Mean − x ≥ 0: mean of max(0, (1 − t/w)/2).
        double half = (High - Low) / 2, t = Mean - x, from = Math.Max(half - D, t), to = half + D;
        if (from >= to) return 0;
        var logs = t == 0 ? 0 : t * (Elementary.Log(to) - Elementary.Log(from));
        return (to - from - logs) / (4 * D);
    }
}
