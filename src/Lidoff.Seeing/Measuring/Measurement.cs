using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Measuring;

/// <summary>Runs a measuring job: the scale once, then each target with its spread, its standard size and its warnings.</summary>
public static class Measurement
{
    // Results are given to 10 nm: below any click, and free of last-bit noise.
    private const int Decimals = 5;

    // A target this many times the longest reference is always warned about; at a third of it, when the scale is doubtful itself.
    private const double AlwaysTooLong = 4;
    private const double TooLongWhenDoubtful = 2.5;
    private const double DoubtfulScale = 0.01;

    // With a typed camera distance the correction is done; it is worth words when it is large: a device
    // 11 mm tall under a camera 300 mm away is 3.7 % off (trade S04).
    private const double LargeCorrection = 0.03;

    /// <summary>Measures. Faults of the whole job (a reference that cannot be one) come back together; a bad target carries its own.</summary>
    /// <param name="job">What to measure.</param>
    /// <param name="frame">The picture's size and what its file says of it.</param>
    /// <param name="look">What the picture itself says, where anybody looked.</param>
    public static Outcome<IReadOnlyList<MeasuredTarget>> Run(MeasureJob job, PictureFrame frame, PictureLook? look = null)
    {
        Guard.NotNull(job);
        Guard.NotNull(frame);
        var faults = JobChecks.References(job, frame);
        faults.AddRange(KnownPoints.Check(job.KnownPoints, frame));
        if (faults.Count > 0) return Outcome<IReadOnlyList<MeasuredTarget>>.Failed(faults);
        var targets = job.Targets.Select(target => new AskedTarget(target.Id, target.Shape is null ? target.Length.Then(length => JobChecks.Target(length, job, frame)) : target.Length, target.Shape)).ToList();
        if (look is not null) (job, targets) = Doubted(job, targets, look);
        IReadOnlyList<ReferenceLength> references = [.. job.References, .. KnownPoints.Lengths(job.KnownPoints, job.ClickPx)];
        var scale = ScaleFit.To(references, frame, job.ClickPx, job.CameraDistanceMm, look?.Slant);
        MeasuredTarget[] measured = [.. targets.Select(target => target.Shape is null
            ? new MeasuredTarget(target.Id, target.Length.Then(length => Measure(length, scale, frame, look)))
            : Shaped(target.Shape, job, scale, frame, look))];
        return measured;
    }

    private static MeasuredTarget Shaped(TargetShape shape, MeasureJob job, ScaleFit scale, PictureFrame frame, PictureLook? look)
    {
        var measured = ShapeMeasurement.Run(shape, scale, job, frame, chord => Warnings(chord, scale, frame, look, NormalMixture.Quantile(scale.Length(chord), 0.5)));
        return measured.Ok ? MeasuredTarget.Of(measured.Value) : new(shape.Id, Outcome<MeasuredLength>.Failed(measured.Faults));
    }

    /// <summary>Ends on wide edges carry that width besides their click.</summary>
    private static (MeasureJob Job, List<AskedTarget> Targets) Doubted(MeasureJob job, List<AskedTarget> targets, PictureLook look) => (
        job with { References = [.. job.References.Select(reference => reference with { ClickPx = look.Click(reference.From, reference.To, reference.ClickPx ?? job.ClickPx) })] },
        [.. targets.Select(target => target.Length.Ok && target.Shape is null
            ? target with { Length = target.Length.Then<TargetLength>(length => length with { ClickPx = look.Click(length.From, length.To, length.ClickPx ?? job.ClickPx) }) }
            : target)]);

    private static MeasuredLength Measure(TargetLength target, ScaleFit scale, PictureFrame frame, PictureLook? look)
    {
        var parts = NormalMixture.Thinned(scale.Length(target));
        var value = NormalMixture.Quantile(parts, 0.5);
        var u = Math.Sqrt(parts.Sum(part => part.Weight * ((part.Sd * part.Sd) + ((part.Mean - value) * (part.Mean - value)))));
        var (_, relative) = scale.Along(target.From, target.To, target.HeightMm);
        return new(
            target.Id,
            Math.Round(value, Decimals),
            Math.Round(u, Decimals),
            Math.Round(NormalMixture.Quantile(parts, 0.05), Decimals),
            Math.Round(NormalMixture.Quantile(parts, 0.95), Decimals),
            relative,
            StandardRank.Snap(value, u, StandardSizes.For(target.Id)),
            Warnings(target, scale, frame, look, value));
    }

    private static List<MeasureWarning> Warnings(TargetLength target, ScaleFit scale, PictureFrame frame, PictureLook? look, double value)
    {
        var warnings = new List<MeasureWarning>();
        var step = target.HeightMm - scale.ReferenceHeightMm;
        if (step != 0)
        {
            var level = scale.Along(target.From, target.To, scale.ReferenceHeightMm);
            var shift = (target.From.DistanceTo(target.To) / level.PxPerMm) - value;
            if (!scale.CameraDistanceKnown) warnings.Add(new(WarningCodes.OtherPlane, SeeingSentences.OtherPlane(step, Math.Abs(shift))));
            else if (Math.Abs(shift) > LargeCorrection * value) warnings.Add(new(WarningCodes.OtherPlane, SeeingSentences.OtherPlaneCorrected(step, Math.Abs(shift))));
        }

        if (scale.UnequalAxes is > 0 and var axes) warnings.Add(new(WarningCodes.UnequalAxes, SeeingSentences.UnequalAxes(100 * axes)));
        if (frame.Mirrored) warnings.Add(new(WarningCodes.Mirrored, SeeingSentences.Mirrored()));
        else if (look?.WordsMirrored == true) warnings.Add(new(WarningCodes.Mirrored, SeeingSentences.WordsMirrored()));
        var times = target.From.DistanceTo(target.To) / scale.LongestReferencePx;
        if (times >= AlwaysTooLong || (times >= TooLongWhenDoubtful && scale.BestReferenceU > DoubtfulScale))
        {
            warnings.Add(new(WarningCodes.ShortReference, SeeingSentences.ShortReference(times)));
        }

        if (scale.LensMatters(target)) warnings.Add(new(WarningCodes.Lens, SeeingSentences.Lens(100 * scale.LensGrowth)));
        if (scale.SlantMatters(target)) warnings.Add(new(WarningCodes.Tilt, SeeingSentences.Tilt(scale.SlantDegrees, 100 * scale.SlopeAcross)));
        if (scale.Disagrees) warnings.Add(new(WarningCodes.ReferenceDisagrees, SeeingSentences.ReferenceDisagrees(100 * scale.ReferenceSpread)));
        return warnings;
    }
}
