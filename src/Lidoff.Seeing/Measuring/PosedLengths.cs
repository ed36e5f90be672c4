using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Cameras;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// Lengths and shapes of a picture under all poses of its camera that a <see cref="ScaleFit"/> leaves open: first order in the clicks and the known lengths, one part of a mixture for each pose.
/// </summary>
/// <param name="fit">Poses with weights.</param>
/// <param name="frame">The picture.</param>
/// <param name="clickPx">Standard uncertainty of each clicked end, px, where a target does not carry its own.</param>
/// <param name="referenceHeightMm">Mean height of the known lengths above the board, mm.</param>
internal sealed class PosedLengths(PoseFit fit, PictureFrame frame, double clickPx, double referenceHeightMm)
{
    // Heights are typed from drawings or estimated by eye: standard uncertainty as a share of the height difference.
    private const double HeightSpread = 0.05;

    /// <summary>px per mm at <paramref name="heightMm"/> for a chord between two places, and its relative standard uncertainty.</summary>
    public (double PxPerMm, double RelativeU) Along(PicturePoint from, PicturePoint to, double heightMm)
    {
        var (mean, relative) = Scale(Mixture(from, to, heightMm));
        return (from.DistanceTo(to) / mean, relative);
    }

    /// <summary>
    /// The target's length as a mixture of normals over poses (weight, mean and standard deviation, mm), and the part of its relative
    /// standard uncertainty that comes from the scale alone.
    /// </summary>
    public (IReadOnlyList<(double Weight, double Mean, double Sd)> Parts, double ScaleShare) Length(TargetLength target)
    {
        var own = 2 * Square((target.ClickPx ?? clickPx) / target.From.DistanceTo(target.To));
        var scale = Mixture(target.From, target.To, target.HeightMm);
        return ([.. scale.Select(part => (part.Weight, part.Mm, part.Mm * Math.Sqrt(own + Square(part.RelativeU))))], Scale(scale).RelativeU);
    }

    /// <summary>The share of the poses, by weight, that can show a length at all: it stands below the camera and this side of the horizon.</summary>
    public double ShareThatShows(TargetLength target)
    {
        var chord = SeenChord.Of(target.From, target.To, frame);
        return fit.Poses.Sum(pose => (pose.DistanceMm - (target.HeightMm * pose.Pose.PerHeight)) * pose.Pose.Unit(chord, pose.Focal) > 0 ? pose.Weight : 0);
    }

    private static (double Mm, double RelativeU) Scale(List<(double Weight, double Mm, double RelativeU)> parts)
    {
        var mean = parts.Sum(part => part.Weight * part.Mm);
        var variance = parts.Sum(part => part.Weight * (Square(part.Mm * part.RelativeU) + Square(part.Mm - mean)));
        return (mean, Math.Sqrt(variance) / mean);
    }

    /// <summary>
    /// A shape as a mixture of normals over poses, in mm, mm² or degrees, empty where its places have none under any pose; and the part of
    /// its relative standard uncertainty that comes from the scale alone.
    /// </summary>
    public (IReadOnlyList<(double Weight, double Mean, double Sd)> Parts, double ScaleShare) Shape(TargetShape target)
    {
        var half = Math.Max(frame.Width, frame.Height) / 2.0;
        (double X, double Y)[] seen = [.. target.Points.Select(point => ((point.X - (frame.Width / 2.0)) / half, (point.Y - (frame.Height / 2.0)) / half))];
        var power = ShapeValue.Power(target.Kind);
        var clicks = double.NaN;
        var parts = new List<(double Weight, double Mean, double Sd)>();
        var scales = new List<(double Weight, double Mm, double RelativeU)>();
        foreach (var pose in fit.Poses.OrderByDescending(pose => pose.Weight))
        {
            var perHeight = pose.Pose.PerHeight;
            var down = pose.DistanceMm - (target.HeightMm * perHeight);
            (double X, double Y)[] at = [.. seen.Select(place => pose.Pose.OnBoard(place.X, place.Y, pose.Focal))];
            var value = ShapeValue.Of(target.Kind, at);
            if (!double.IsFinite(value) || down <= 0) continue;
            // The clicks' part, first order, is that of the likeliest pose; poses differ in it by less than it matters.
            var scale = power switch { 0 => 1, 1 => down, _ => down * down };
            if (double.IsNaN(clicks)) clicks = scale * Clicks(target.Kind, at, (target.ClickPx ?? clickPx) / half / pose.Focal);
            var height = HeightSpread * (target.HeightMm - referenceHeightMm) * perHeight / down;
            var relative = power * Math.Sqrt(Square(pose.UMm / down) + Square(height));
            parts.Add((pose.Weight, value * scale, Math.Sqrt(Square(clicks) + Square(value * scale * relative))));
            scales.Add((pose.Weight, value * scale, relative));
        }

        var kept = parts.Sum(part => part.Weight);
        return (
            [.. parts.Select(part => part with { Weight = part.Weight / kept })],
            kept > 0 ? Scale([.. scales.Select(part => part with { Weight = part.Weight / kept })]).RelativeU : 0);
    }

    private static double Clicks(ShapeKind kind, (double X, double Y)[] at, double click) =>
        click * Math.Sqrt(ShapeValue.Slopes(kind, at, Math.Max(click, 1e-9) * 1e-2).Sum(slope => Square(slope.X) + Square(slope.Y)));

    private List<(double Weight, double Mm, double RelativeU)> Mixture(PicturePoint from, PicturePoint to, double heightMm)
    {
        var chord = SeenChord.Of(from, to, frame);
        var parts = new List<(double Weight, double Mm, double RelativeU)>();
        var kept = 0.0;
        foreach (var pose in fit.Poses)
        {
            var perHeight = pose.Pose.PerHeight;
            var down = pose.DistanceMm - (heightMm * perHeight);
            var mm = down * pose.Pose.Unit(chord, pose.Focal);
            if (!(mm > 0)) continue;
            kept += pose.Weight;
            var height = HeightSpread * (heightMm - referenceHeightMm) * perHeight / down;
            parts.Add((pose.Weight, mm, Math.Sqrt(Square(pose.UMm / down) + Square(height))));
        }

        Guard.That(kept > 0, "a length that at least one pose of the camera can show");
        return [.. parts.Select(part => part with { Weight = part.Weight / kept })];
    }

    private static double Square(double x) => x * x;
}
