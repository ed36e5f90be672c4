using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Measuring.Shapes;

/// <summary>Measures circles, pitches, angles and areas by a picture's scale.</summary>
internal static class ShapeMeasurement
{
    private const int Decimals = 5;

    /// <summary>The shape with its doubt, or the fault of places that make none.</summary>
    /// <param name="target">What to find, checked.</param>
    /// <param name="scale">The picture's scale.</param>
    /// <param name="warn">Warnings of a chord of it, with its value in mm.</param>
    public static Outcome<MeasuredShape> Run(TargetShape target, ScaleFit scale, Func<TargetLength, IReadOnlyList<MeasureWarning>> warn)
    {
        var (parts, share) = scale.Lengths.Shape(target);
        (double X, double Y)[] seen = [.. target.Points.Select(point => (point.X, point.Y))];
        if (parts.Count == 0 || !double.IsFinite(ShapeValue.Of(target.Kind, seen))) return new Fault("points", "places that make one", SeeingSentences.NoShape(target.Kind));
        var value = NormalMixture.Quantile(parts, 0.5);
        var u = Math.Sqrt(parts.Sum(part => part.Weight * ((part.Sd * part.Sd) + ((part.Mean - value) * (part.Mean - value)))));
        var gaps = target.Kind == ShapeKind.Pitch ? ShapeValue.Comb(seen).Gaps : 0;
        return new MeasuredShape(
            target.Id,
            target.Kind,
            Math.Round(value, Decimals),
            Math.Round(u, Decimals),
            Math.Round(Math.Max(0, NormalMixture.Quantile(parts, 0.05)), Decimals),
            Math.Round(NormalMixture.Quantile(parts, 0.95), Decimals),
            share,
            gaps,
            target.Kind == ShapeKind.Pitch ? StandardRank.Snap(value, u, StandardSizes.PitchSizes) : null,
            warn(target.Longest()));
    }
}
