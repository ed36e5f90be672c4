using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Cameras;
using Lidoff.Seeing.Measuring.Carrying;
using Lidoff.Seeing.Measuring.Shapes;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// The scale of one picture, fitted to one or several known lengths, with its doubt: click errors, errors of the references, slant,
/// lens, shape of the pixels and the camera's distance. First order in the clicks and the known lengths; what is open of the camera is
/// run through as a set of poses with weights (<see cref="PoseFit"/>).
/// </summary>
public sealed class ScaleFit
{
    // Heights are typed from drawings or estimated by eye: standard uncertainty as a share of the height difference.
    private const double HeightSpread = 0.05;

    // Two references that differ by more are more likely a wrong length or height than a slant: it would take 21°.
    private const double BelievableWarp = 0.07;

    // Up to so many references cannot tell a slope across the picture from a scale for each direction.
    private const int FewReferences = 3;

    // One known length in thirty is mistyped, clicked wrongly or lies elsewhere, by a twentieth or so. Common practice, no source.
    private const double MistakeRate = 0.033;
    private const double Mistake = 0.06;

    // A difference between directions below this is in every picture that a hand took, and the interval holds it.
    private const double WorthWords = 0.025;

    // What slant or lens does to a length is worth words from 1.5 %, if it is likely above half of that.
    private const double WorthMove = 0.015;
    private const double LeastMove = 0.0075;
    private const double Likely = 0.9;

    // A slant of 12°, a scale that changes by a fifth across the picture, a lens that moves the edge by 3 %: said with any length.
    private const double StrongSlant = 12;
    private const double StrongSlope = 0.2;
    private const double StrongBend = 0.03;

    // Relative.
    private const double LeastU = 1e-6;

    // What is called established has these odds.
    private const double Sure = 0.95;

    private readonly IReadOnlyList<ReferenceLength> references;

    // The same, where places that are known are the lengths between them: for words.
    private readonly IReadOnlyList<ReferenceLength> lengths;
    private readonly PictureFrame frame;
    private readonly double clickPx;
    private readonly PoseFit fit;
    private PoseLikelihood likelihood;
    private readonly ReferenceWarp warp;
    private readonly Lazy<double> unequalAxes;
    private readonly Lazy<bool> slantIsStrong;
    private readonly Lazy<bool> lensIsStrong;
    private readonly Lazy<(CameraPose Pose, double DistanceMm)[]> square;
    private readonly Lazy<(CameraPose Pose, double DistanceMm)[]> straight;

    private ScaleFit(IReadOnlyList<ReferenceLength> references, IReadOnlyList<ReferenceLength> lengths, PictureFrame frame, double clickPx, double? cameraDistanceMm, PictureSlant? slant, CarriedLens? lens)
    {
        this.references = references;
        this.lengths = lengths;
        this.frame = frame;
        this.clickPx = clickPx;
        var u = references.Select(reference => RelativeU(reference, clickPx)).ToList();
        var weights = u.Select(each => 1 / Square(each)).ToList();
        ReferenceHeightMm = references.All(reference => reference.HeightMm == references[0].HeightMm)
            ? references[0].HeightMm
            : references.Zip(weights, (reference, weight) => reference.HeightMm * weight).Sum() / weights.Sum();
        var level = references.Zip(weights, (reference, weight) => weight * LogScale(reference)).Sum() / weights.Sum();
        var halfSide = Math.Max(frame.Width, frame.Height) / 2.0 / Elementary.Exp(level);
        CameraDistanceKnown = cameraDistanceMm is not null;
        var belief = CameraBelief.Of(cameraDistanceMm - ReferenceHeightMm, halfSide, frame.FocalLongSides, lens);
        fit = Fit(belief, slant, 0);
        warp = Warp([.. lengths.Select(length => RelativeU(length, clickPx))]);
        var (misfit, degrees) = (fit.Misfit - likelihood.Expected, references.Count - 1 + likelihood.Degrees);
        Disagrees = misfit > ReferenceWarp.MisfitLimit(degrees, seldom: true)
            || (slant is null && lengths.Count == 2 && !warp.Even && warp.Spread > BelievableWarp)
            || (lengths.Count is > 1 and <= FewReferences && !warp.Even && MoreLikelyWrong(belief, slant));
        Scattered = !Disagrees && misfit > ReferenceWarp.MisfitLimit(degrees, seldom: false);
        // One even scale does not explain them, and a slant does: then it is believed in as in one that was meant.
        var slanted = !warp.Even && !likelihood.HasTarget && ShownSlant.LikelihoodRatio(fit) >= ShownSlant.LeastRatio ? fit.Weighed(CameraBelief.Slanted) : null;
        if (slanted is not null) Shown = ShownSlant.Of(ShownSlant.LikelihoodRatio(fit), slanted);
        // Where one of them may as well be wrong, the intervals hold either.
        // Places that do not fit each other are each as much less known as they scatter more (Birge's ratio, Phys. Rev. 40, 1932).
        if (Disagrees || Scattered) fit = Fit(belief, slant, references.Count > 1 ? warp.Between() : 0, likelihood.Degrees > 0 ? Math.Sqrt(Math.Max(1, misfit / degrees)) : 1);
        if (slanted is not null) fit = Disagrees || Scattered ? fit.Beside(slanted) : slanted;
        unequalAxes = new(Axes);
        slantIsStrong = new(() => fit.Share(pose => pose.SlopeAcross > StrongSlope || pose.SlantDegrees > StrongSlant) > Sure);
        lensIsStrong = new(() => fit.Share(pose => Math.Abs(pose.Bend) > StrongBend) > Sure);
        square = new(() => Without(pose => pose with { Right = 0, Down = 0 }));
        straight = new(() => Without(pose => pose with { Bend = 0 }));
    }

    /// <summary>The slant that explains why known lengths disagree, beside a mistake in one of them where they <see cref="Disagrees"/>; null where none does or they agree.</summary>
    internal ShownSlant? Shown { get; }

    /// <summary>True when the references contradict one another and nothing about camera or lens settles it.</summary>
    public bool Disagrees { get; }

    /// <summary>True when the references lie so far apart that their own scatter was taken into the doubt, though not so far that one must be wrong.</summary>
    public bool Scattered { get; }

    /// <summary>Relative difference between the largest and the smallest scale that single references give.</summary>
    public double ReferenceSpread => warp.Spread;

    /// <summary>Mean height of the references above the board, mm, weighted as they count.</summary>
    public double ReferenceHeightMm { get; }

    /// <summary>Longest reference, px.</summary>
    public double LongestReferencePx => references.Max(reference => reference.From.DistanceTo(reference.To));

    /// <summary>Relative standard uncertainty of the best known reference: its clicks and its length alone.</summary>
    public double BestReferenceU => references.Min(reference => RelativeU(reference, clickPx));

    /// <summary>True when a person gave the camera's distance.</summary>
    public bool CameraDistanceKnown { get; }

    /// <summary>
    /// Relative difference of the scale between two directions where it is worth words: because a few references show it, or because
    /// the pixels are established to be higher than wide or wider than high. 0 otherwise.
    /// </summary>
    public double UnequalAxes => unequalAxes.Value;

    /// <summary>Slant of the camera, degrees, as far as it is known.</summary>
    public double SlantDegrees => fit.Mean(pose => pose.SlantDegrees);

    /// <summary>Slants between which it lies with a probability of 90 %, degrees.</summary>
    public (double Low, double High) SlantRange => (fit.Quantile(pose => pose.SlantDegrees, 0.05), fit.Quantile(pose => pose.SlantDegrees, 0.95));

    /// <summary>Relative change of the scale across the long side along the slope.</summary>
    public double SlopeAcross => fit.Mean(pose => pose.SlopeAcross);

    /// <summary>How far the lens moves the end of the long side, as a share of its distance from the middle.</summary>
    public double LensGrowth => Math.Abs(fit.Mean(pose => pose.Bend));

    /// <summary>
    /// Whether the camera's slant is worth words for this length: established, and it moves the length against what set the scale, or is
    /// so strong that no length of the picture should be taken without them.
    /// </summary>
    internal bool SlantMatters(TargetLength target) => !Disagrees
        && ((Shown is not null && UnequalAxes <= 0) || slantIsStrong.Value || Moves(target, square.Value));

    /// <summary>Whether the lens is worth words for this length.</summary>
    internal bool LensMatters(TargetLength target) => !Disagrees
        && (lensIsStrong.Value || Moves(target, straight.Value));

    /// <summary>mm at <see cref="ReferenceHeightMm"/> for half a long side of the picture about its middle, looked at squarely, and its relative standard uncertainty.</summary>
    internal (double Mm, double RelativeU) AtMiddle()
    {
        // What lies in the middle of them: a slant that one known length leaves open pulls on the mean from one side.
        var parts = NormalMixture.Thinned([.. PosesAtMiddle().Select(pose => (pose.Weight, pose.Mm, pose.Mm * pose.RelativeU))]);
        var mm = NormalMixture.Quantile(parts, 0.5);
        return (mm, Math.Sqrt(parts.Sum(part => part.Weight * (Square(part.Sd) + Square(part.Mean - mm)))) / mm);
    }

    /// <summary>The same under each pose, with its weight.</summary>
    internal IEnumerable<(double Weight, double Mm, double RelativeU)> PosesAtMiddle() => fit.Poses.Select(pose =>
    {
        var down = pose.DistanceMm - (ReferenceHeightMm * pose.Pose.PerHeight);
        return (pose.Weight, down / pose.Focal, pose.UMm / down);
    });

    /// <summary>The lens's radial term and its standard uncertainty.</summary>
    internal (double Bend, double U) Lens()
    {
        var mean = fit.Mean(pose => pose.Bend);
        return (mean, Math.Sqrt(fit.Mean(pose => Square(pose.Bend - mean))));
    }

    private double Axes()
    {
        if (Disagrees) return 0;
        if (fit.Share(pose => Math.Abs(pose.Aspect) > WorthWords / 2) > Sure) return Math.Abs(fit.Mean(pose => pose.Aspect));
        return references.Count <= FewReferences && !likelihood.HasTarget && Math.Min(warp.AxesDifference, warp.Spread) > WorthWords ? warp.AxesDifference : 0;
    }

    // Every pose without its slant, or without its lens, and how far away the board then was: the same for every length of the picture.
    private (CameraPose Pose, double DistanceMm)[] Without(Func<CameraPose, CameraPose> what) => [.. fit.Poses.Select(pose =>
    {
        var plain = what(pose.Pose);
        return (plain, likelihood.Distance(plain, pose.Focal).Item1);
    })];

    private bool Moves(TargetLength target, (CameraPose Pose, double DistanceMm)[] without)
    {
        var chord = SeenChord.Of(target.From, target.To, frame);
        var (mean, above, below, kept) = (0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < without.Length; i++)
        {
            var pose = fit.Poses[i];
            var (plain, distance) = without[i];
            var plainly = (distance - (target.HeightMm * plain.PerHeight)) * plain.Unit(chord, pose.Focal);
            var real = (pose.DistanceMm - (target.HeightMm * pose.Pose.PerHeight)) * pose.Pose.Unit(chord, pose.Focal);
            var moved = (real / plainly) - 1;
            if (!double.IsFinite(moved)) continue;
            kept += pose.Weight;
            mean += pose.Weight * moved;
            if (moved > LeastMove) above += pose.Weight;
            if (moved < -LeastMove) below += pose.Weight;
        }

        return Math.Abs(mean) > WorthMove * kept && Math.Max(above, below) > Likely * kept;
    }

    /// <summary>Fits the scale. The references have been checked: at least one, each of two different places and a length above zero.</summary>
    /// <param name="references">Known lengths.</param>
    /// <param name="frame">The picture.</param>
    /// <param name="clickPx">Standard uncertainty of each clicked end, px, where a reference does not carry its own.</param>
    /// <param name="cameraDistanceMm">Distance to the camera, mm, above every height, or null.</param>
    /// <param name="slant">What the picture's straight edges say of the camera, or null.</param>
    /// <param name="places">Places that are known on the board, checked; none for none.</param>
    /// <param name="lens">The lens where another picture told it, or null.</param>
    public static ScaleFit To(
        IReadOnlyList<ReferenceLength> references, PictureFrame frame, double clickPx, double? cameraDistanceMm, PictureSlant? slant = null, IReadOnlyList<KnownPoint>? places = null, CarriedLens? lens = null)
    {
        Guard.That(references.Count > 0 || places is { Count: > 0 }, "at least one reference");
        Guard.NotNegative(clickPx);
        return places is { Count: > 0 }
            ? new([.. references, KnownPoints.Together(places, clickPx)], [.. references, .. KnownPoints.Lengths(places, clickPx)], frame, clickPx, cameraDistanceMm, slant, lens)
            : new(references, references, frame, clickPx, cameraDistanceMm, slant, lens);
    }

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
    internal (IReadOnlyList<(double Weight, double Mean, double Sd)> Parts, double ScaleShare) Length(TargetLength target)
    {
        var own = 2 * Square((target.ClickPx ?? clickPx) / target.From.DistanceTo(target.To));
        var scale = Mixture(target.From, target.To, target.HeightMm);
        return ([.. scale.Select(part => (part.Weight, part.Mm, part.Mm * Math.Sqrt(own + Square(part.RelativeU))))], Scale(scale).RelativeU);
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
    internal (IReadOnlyList<(double Weight, double Mean, double Sd)> Parts, double ScaleShare) Shape(TargetShape target)
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
            var height = HeightSpread * (target.HeightMm - ReferenceHeightMm) * perHeight / down;
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
            var height = HeightSpread * (heightMm - ReferenceHeightMm) * perHeight / down;
            parts.Add((pose.Weight, mm, Math.Sqrt(Square(pose.UMm / down) + Square(height))));
        }

        Guard.That(kept > 0, "a length that at least one pose of the camera can show");
        return [.. parts.Select(part => part with { Weight = part.Weight / kept })];
    }

    /// <summary>Whether one mistaken reference explains them all better than any camera that is believed in.</summary>
    private bool MoreLikelyWrong(CameraBelief belief, PictureSlant? slant)
    {
        var seen = Seen(0);
        var camera = fit.LogEvidence - seen.Sum(reference => Elementary.Log(reference.UMm));
        var wrong = 0.0;
        for (var i = 0; i < seen.Length; i++)
        {
            var one = Seen(0);
            one[i] = one[i] with { UMm = Mistake * one[i].LengthMm };
            if (PoseFit.Of(new(one, slant), belief) is { } without)
            {
                wrong += MistakeRate * Elementary.Exp(without.LogEvidence - one.Sum(reference => Elementary.Log(reference.UMm)) - camera);
            }
        }

        return wrong > 1;
    }

    [System.Diagnostics.CodeAnalysis.MemberNotNull(nameof(likelihood))]
    private PoseFit Fit(CameraBelief belief, PictureSlant? slant, double between, double wider = 1)
    {
        likelihood = new(Seen(between, wider), slant);
        return PoseFit.Of(likelihood, belief) ?? PoseFit.Of(likelihood = new(Seen(between, wider), null), belief)!;
    }

    private SeenReference[] Seen(double between, double wider = 1) =>
    [
        .. references.Select(reference => new SeenReference(
            SeenChord.Of(reference.From, reference.To, frame),
            reference.LengthMm,
            // The places of a target carry their own doubt; besides them counts that of its pitch alone.
            reference.LengthMm * Math.Sqrt(Square(reference.Target is null ? RelativeU(reference, clickPx) : Math.Max(LeastU, reference.UMm / reference.LengthMm)) + Square(between)),
            reference.HeightMm,
            reference.Target is null ? null : SeenTarget.Of(reference.Target, frame, wider),
            reference.Carried)),
    ];

    /// <summary>The references brought down to the board by the camera's likely distance.</summary>
    private ReferenceWarp Warp(List<double> u)
    {
        var distance = Math.Max(fit.Poses.Sum(pose => pose.Weight * pose.DistanceMm), 1.1 * lengths.Max(reference => reference.HeightMm));
        return new(
            [.. lengths.Select(reference => PictureShape.Factors(reference.From, reference.To))],
            [.. lengths.Select(reference => LogScale(reference) - Elementary.Log(distance / (distance - reference.HeightMm)))],
            u);
    }

    private static double LogScale(ReferenceLength reference) => Elementary.Log(reference.From.DistanceTo(reference.To) / reference.LengthMm);

    // Never exactly zero, so that a reference without any error still has a finite weight.
    private static double RelativeU(ReferenceLength reference, double clickPx) => Math.Max(LeastU, Math.Sqrt(
        (2 * Square((reference.ClickPx ?? clickPx) / reference.From.DistanceTo(reference.To))) + Square(reference.UMm / reference.LengthMm)));

    private static double Square(double x) => x * x;
}
