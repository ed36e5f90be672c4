using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Bodies;
using Lidoff.Seeing.Measuring.Shapes;
using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Measuring;

/// <summary>A picture with its known lengths fitted: every length and shape in it is measured by the same cameras, fitted once.</summary>
public sealed class ScaledPicture
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

    private const double LeastShown = 0.5;

    private readonly MeasureJob job;
    private readonly PictureFrame frame;
    private readonly PictureLook? look;

    private readonly double? contradicted;

    private ScaledPicture(MeasureJob job, PictureFrame frame, PictureLook? look, ScaleFit fit)
    {
        (this.job, this.frame, this.look, Fit) = (job, frame, look, fit);
        // A carried scale that counts itself is weighed against the others by the fit.
        if (job.Camera is { } camera && camera.Calibration.Fits(frame) && !job.References.Any(reference => reference.Carried)) contradicted = camera.Calibration.Contradicts(fit);
    }

    /// <summary>The scale.</summary>
    public ScaleFit Fit { get; }

    /// <summary>The picture's size and what its file says of it.</summary>
    public PictureFrame Frame => frame;

    /// <summary>True where a target lies in it.</summary>
    public bool ByTarget => job.References.Any(reference => reference.Target is not null);

    /// <summary>Fits the scale; faults of all its known lengths and places come back together.</summary>
    /// <param name="job">Known lengths and places, the click's doubt, the camera's distance and what another picture tells of it; its targets do not matter.</param>
    /// <param name="frame">The picture's size and what its file says of it.</param>
    /// <param name="look">What the picture itself says, where anybody looked.</param>
    public static Outcome<ScaledPicture> Of(MeasureJob job, PictureFrame frame, PictureLook? look = null)
    {
        Guard.NotNull(job);
        Guard.NotNull(frame);
        var faults = JobChecks.References(job, frame);
        faults.AddRange(KnownPoints.Check(job.KnownPoints, frame));
        if (faults.Count > 0) return Outcome<ScaledPicture>.Failed(faults);
        // Ends on wide edges carry that width besides their click; a target's places were not clicked.
        var lengths = look is null ? job.References : [.. job.References.Select(reference => reference.Target is not null || reference.Carried ? reference : reference with { ClickPx = look.Click(reference.From, reference.To, reference.ClickPx ?? job.ClickPx) })];
        var lens = job.Camera is { } camera && camera.Calibration.Fits(frame) ? camera.Calibration.Lens : null;
        return ScaleFit.To([.. lengths], frame, job.ClickPx, job.CameraDistanceMm, look?.Slant, job.KnownPoints, lens) is { } fit
            ? new ScaledPicture(job, frame, look, fit)
            : new Fault(job.CameraDistanceMm is null ? "reference" : "camera_distance_mm", "known lengths that a camera can show", SeeingSentences.NoCamera(job.CameraDistanceMm));
    }

    /// <summary>The job without those of its known lengths that have a fault of their own.</summary>
    public static MeasureJob Usable(MeasureJob job, PictureFrame frame)
    {
        Guard.NotNull(job);
        return job with { References = [.. job.References.Where(reference => JobChecks.Reference(reference, "", job, frame).Count == 0)] };
    }

    /// <summary>A length with its doubt, its standard size and its warnings, or the faults of its ends.</summary>
    public Outcome<MeasuredLength> Length(TargetLength target) => JobChecks.Target(target, job, frame).Then<MeasuredLength>(length => AboveCamera(length) is { } fault
        ? fault
        : Measure(look is null || length.OnEdges ? length : length with { ClickPx = look.Click(length.From, length.To, length.ClickPx ?? job.ClickPx) }));

    /// <summary>A circle, pitch, angle or area with its doubt, or the faults of its places.</summary>
    public Outcome<MeasuredShape> Shape(TargetShape target) => JobChecks.Shape(target, job, frame) is { Count: > 0 } faults ? Outcome<MeasuredShape>.Failed(faults)
        : AboveCamera(target.Longest()) is { } above ? above
        : ShapeMeasurement.Run(target, Fit, chord => Warnings(chord, NormalMixture.Quantile(Fit.Lengths.Length(chord).Parts, 0.5)));

    /// <summary>A rectangular body with its doubt, or the faults of its corners.</summary>
    public Outcome<MeasuredBody> Body(TargetBody target) => JobChecks.Body(target, job, frame) is { Count: > 0 } faults ? Outcome<MeasuredBody>.Failed(faults)
        : AboveCamera(new(target.Id, target.Corners[0], target.Corners[1], target.HeightMm)) is { } above ? above
        : BodyMeasurement.Run(target, job, Measure);

    // What most of the poses that are left cannot show stands beyond the camera, or beyond the horizon.
    private Fault? AboveCamera(TargetLength length) => Fit.Lengths.ShareThatShows(length) >= LeastShown ? null
        : new Fault("height_mm", "a height below the camera", SeeingSentences.AboveLikelyCamera(length.HeightMm, Fit.LikelyDistanceMm));

    private MeasuredLength Measure(TargetLength target)
    {
        var (all, share) = Fit.Lengths.Length(target);
        var parts = NormalMixture.Thinned(all);
        var value = NormalMixture.Quantile(parts, 0.5);
        var u = Math.Sqrt(parts.Sum(part => part.Weight * ((part.Sd * part.Sd) + ((part.Mean - value) * (part.Mean - value)))));
        return new(
            target.Id,
            Math.Round(value, Decimals),
            Math.Round(u, Decimals),
            // First order in the clicks knows nothing of a length's being above zero.
            Math.Round(Math.Max(0, NormalMixture.Quantile(parts, 0.05)), Decimals),
            Math.Round(NormalMixture.Quantile(parts, 0.95), Decimals),
            share,
            StandardRank.Snap(value, u, StandardSizes.For(target.Id)),
            Warnings(target, value));
    }

    private List<MeasureWarning> Warnings(TargetLength target, double value)
    {
        var warnings = new List<MeasureWarning>();
        var step = target.HeightMm - Fit.ReferenceHeightMm;
        if (step != 0)
        {
            var level = Fit.Along(target.From, target.To, Fit.ReferenceHeightMm);
            var shift = (target.From.DistanceTo(target.To) / level.PxPerMm) - value;
            if (!Fit.CameraDistanceKnown) warnings.Add(new(WarningCodes.OtherPlane, SeeingSentences.OtherPlane(step, Math.Abs(shift))));
            else if (Math.Abs(shift) > LargeCorrection * value) warnings.Add(new(WarningCodes.OtherPlane, SeeingSentences.OtherPlaneCorrected(step, Math.Abs(shift))));
        }

        var explains = Fit.Shown is var (ratio, degrees, low, high) ? SeeingSentences.SlantExplains(ratio, degrees, low, high) : "";
        if (Fit.UnequalAxes is > 0 and var axes) warnings.Add(new(WarningCodes.UnequalAxes, SeeingSentences.UnequalAxes(100 * axes, explains)));
        if (frame.Mirrored) warnings.Add(new(WarningCodes.Mirrored, SeeingSentences.Mirrored()));
        else if (look?.WordsMirrored == true) warnings.Add(new(WarningCodes.Mirrored, SeeingSentences.WordsMirrored()));
        var times = target.From.DistanceTo(target.To) / Fit.LongestReferencePx;
        if (times >= AlwaysTooLong || (times >= TooLongWhenDoubtful && Fit.BestReferenceU > DoubtfulScale))
        {
            warnings.Add(new(WarningCodes.ShortReference, SeeingSentences.ShortReference(times)));
        }

        var (slant, lens) = Fit.Matter(target);
        if (lens) warnings.Add(new(WarningCodes.Lens, SeeingSentences.Lens(100 * Fit.LensGrowth)));
        if (slant) warnings.Add(new(WarningCodes.Tilt, SeeingSentences.Tilt(Fit.SlantDegrees, Fit.SlantRange, 100 * Fit.SlopeAcross, explains)));
        if (contradicted is { } apart) warnings.Add(new(WarningCodes.ReferenceDisagrees, SeeingSentences.CarriedDisagrees(job.Camera!.From, 100 * apart)));
        else if (Fit.Disagrees) warnings.Add(new(WarningCodes.ReferenceDisagrees, SeeingSentences.ReferenceDisagrees(100 * Fit.ReferenceSpread, explains)));
        return warnings;
    }
}
