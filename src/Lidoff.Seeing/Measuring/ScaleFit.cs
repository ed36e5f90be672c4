using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Cameras;
using Lidoff.Seeing.Measuring.Carrying;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// The scale of one picture, fitted to one or several known lengths, with its doubt: click errors, errors of the references, slant,
/// lens, shape of the pixels and the camera's distance. First order in the clicks and the known lengths; what is open of the camera is
/// run through as a set of poses with weights (<see cref="PoseFit"/>).
/// </summary>
public sealed class ScaleFit
{
    // Two references that differ by more are more likely a wrong length or height than a slant: it would take 21°.
    private const double BelievableWarp = 0.07;

    // A difference between directions that is worth words beside a wrong length that explains the same.
    private const double WorthAxes = 0.025;

    // Up to so many references cannot tell a slope across the picture from a scale for each direction.
    private const int FewReferences = 3;

    // One known length in thirty is mistyped, clicked wrongly or lies elsewhere, by a twentieth or so. Common practice, no source.
    private const double MistakeRate = 0.033;
    private const double Mistake = 0.06;

    // Relative.
    private const double LeastU = 1e-6;

    private readonly IReadOnlyList<ReferenceLength> references;

    // Which of them belong together, wrong together or not at all.
    private readonly List<int[]> sources;

    // The same, where places that are known are the lengths between them: for words.
    private readonly IReadOnlyList<ReferenceLength> lengths;
    private readonly PictureFrame frame;
    private readonly double clickPx;
    private readonly PoseFit fit;
    private readonly ReferenceWarp warp;
    private readonly CameraWords words;

    // The same for every length of the picture, and sorting thousands of poses takes as long as several lengths.
    private readonly Lazy<(double Degrees, (double Low, double High) Range, double Slope, double Bend)> seen;

    private ScaleFit(IReadOnlyList<ReferenceLength> references, IReadOnlyList<ReferenceLength> lengths, PictureFrame frame, double clickPx, CameraBelief belief, PictureSlant? slant, (PoseLikelihood Likelihood, PoseFit Fit) first)
    {
        this.references = references;
        this.lengths = lengths;
        this.frame = frame;
        this.clickPx = clickPx;
        ReferenceHeightMm = HeightOf(references, clickPx);
        // Parts of one ruler are one source.
        sources = [.. Enumerable.Range(0, references.Count).GroupBy(at => references[at].Ruler is { } ruler ? -1 - ruler : at).Select(source => source.ToArray())];
        (var likelihood, fit) = first;
        warp = Warp([.. lengths.Select(length => RelativeU(length, clickPx))]);
        var (misfit, degrees) = (fit.Misfit - likelihood.Expected, references.Count - 1 + likelihood.Degrees);
        Disagrees = misfit > ReferenceWarp.MisfitLimit(degrees, seldom: true)
            || (slant is null && lengths.Count == 2 && sources.Count == 2 && !warp.Even && warp.Spread > BelievableWarp)
            || (lengths.Count <= FewReferences && sources.Count > 1 && !warp.Even && MoreLikelyWrong(belief, slant));
        Scattered = !Disagrees && misfit > ReferenceWarp.MisfitLimit(degrees, seldom: false);
        // One even scale does not explain them, and a slant does: then it is believed in as in one that was meant.
        var slanted = !warp.Even && !likelihood.HasTarget && ShownSlant.LikelihoodRatio(fit, belief) >= ShownSlant.LeastRatio ? fit.Weighed(belief.Slanted) : null;
        if (slanted is not null) Shown = ShownSlant.Of(ShownSlant.LikelihoodRatio(fit, belief), slanted);
        // Where one of them may as well be wrong, the intervals hold either.
        // Places that do not fit each other are each as much less known as they scatter more (Birge's ratio, Phys. Rev. 40, 1932).
        if (Disagrees || Scattered) (likelihood, fit) = Fit(Seen(references, frame, clickPx, references.Count > 1 ? warp.Between() : 0, likelihood.Degrees > 0 ? Math.Sqrt(Math.Max(1, misfit / degrees)) : 1), belief, slant)!.Value;
        if (slanted is not null) fit = Disagrees || Scattered ? fit.Beside(slanted) : slanted;
        seen = new(() => (
            fit.Mean(pose => pose.SlantDegrees), (fit.Quantile(pose => pose.SlantDegrees, 0.05), fit.Quantile(pose => pose.SlantDegrees, 0.95)),
            fit.Mean(pose => pose.SlopeAcross), Math.Abs(fit.Mean(pose => pose.Bend))));
        Lengths = new(fit, frame, clickPx, ReferenceHeightMm);
        words = new(fit, likelihood, frame, references.Count <= FewReferences && !likelihood.HasTarget ? Math.Min(warp.AxesDifference, warp.Spread) : 0, warp.AxesDifference);
    }

    /// <summary>What is measured by it.</summary>
    internal PosedLengths Lengths { get; }

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
    public double LongestReferencePx => sources.Max(source => source.Sum(at => references[at].From.DistanceTo(references[at].To)));

    /// <summary>Relative standard uncertainty of the best known reference: its clicks and its length alone.</summary>
    public double BestReferenceU => references.Min(reference => RelativeU(reference, clickPx));

    /// <summary>True when a person gave the camera's distance.</summary>
    public bool CameraDistanceKnown { get; private init; }

    /// <summary>
    /// Relative difference of the scale between two directions where it is worth words: because a few references show it, or because
    /// the pixels are established to be higher than wide or wider than high. Where they disagree, because such a difference explains them as well as one wrong length does. 0 otherwise.
    /// </summary>
    public double UnequalAxes => !Disagrees ? words.UnequalAxes : lengths.Count <= FewReferences && warp.AxesDifference is > WorthAxes and < BelievableWarp ? warp.AxesDifference : 0;

    /// <summary>How far away the camera was along its axis, mm, as far as it is known.</summary>
    internal double LikelyDistanceMm => fit.Poses.Sum(pose => pose.Weight * pose.DistanceMm);

    /// <summary>Slant of the camera, degrees, as far as it is known.</summary>
    public double SlantDegrees => seen.Value.Degrees;

    /// <summary>Slants between which it lies with a probability of 90 %, degrees.</summary>
    public (double Low, double High) SlantRange => seen.Value.Range;

    /// <summary>Relative change of the scale across the long side along the slope.</summary>
    public double SlopeAcross => seen.Value.Slope;

    /// <summary>How far the lens moves the end of the long side, as a share of its distance from the middle.</summary>
    public double LensGrowth => seen.Value.Bend;

    /// <summary>
    /// Whether the camera's slant and the lens are worth words for this length: established, and they move the length against what set the scale, or are
    /// so strong that no length of the picture should be taken without them.
    /// </summary>
    internal (bool Slant, bool Lens) Matter(TargetLength target)
    {
        if (Disagrees) return (false, false);
        var shown = Shown is not null && UnequalAxes <= 0;
        var (slant, lens) = (shown || words.SlantIsStrong) && words.LensIsStrong ? (true, true) : words.Moves(target);
        return (shown || words.SlantIsStrong || slant, words.LensIsStrong || lens);
    }

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

    /// <summary>Fits the scale; null where no camera can show the known lengths. The references have been checked: at least one, each of two different places and a length above zero.</summary>
    /// <param name="references">Known lengths.</param>
    /// <param name="frame">The picture.</param>
    /// <param name="clickPx">Standard uncertainty of each clicked end, px, where a reference does not carry its own.</param>
    /// <param name="cameraDistanceMm">Distance to the camera, mm, above every height, or null.</param>
    /// <param name="slant">What the picture's straight edges say of the camera, or null.</param>
    /// <param name="places">Places that are known on the board, checked; none for none.</param>
    /// <param name="lens">The lens where another picture told it, or null.</param>
    public static ScaleFit? To(
        IReadOnlyList<ReferenceLength> references, PictureFrame frame, double clickPx, double? cameraDistanceMm, PictureSlant? slant = null, IReadOnlyList<KnownPoint>? places = null, CarriedLens? lens = null)
    {
        Guard.That(references.Count > 0 || places is { Count: > 0 }, "at least one reference");
        Guard.NotNegative(clickPx);
        IReadOnlyList<ReferenceLength> all = places is { Count: > 0 } ? [.. references, KnownPoints.Together(places, clickPx)] : references;
        IReadOnlyList<ReferenceLength> lengths = places is { Count: > 0 } ? [.. references, .. KnownPoints.Lengths(places, clickPx)] : references;
        var weights = Weights(all, clickPx);
        var level = all.Zip(weights, (reference, weight) => weight * LogScale(reference)).Sum() / weights.Sum();
        var belief = CameraBelief.Of(cameraDistanceMm - HeightOf(all, clickPx), Math.Max(frame.Width, frame.Height) / 2.0 / Elementary.Exp(level), frame.FocalLongSides, lens, frame.Worked);
        if (Fit(Seen(all, frame, clickPx, 0), belief, slant) is not { } first) return null;
        // Looked at from the side, as its edges show: what is usual would hold the slant back. Lengths alone may be mistaken, and a target tells it by itself.
        if (slant is not null && !first.Likelihood.HasTarget && belief.AfterSeeing(first.Fit) is { } slanting && Fit(Seen(all, frame, clickPx, 0), slanting, slant) is { } again) (belief, first) = (slanting, again);
        return new(all, lengths, frame, clickPx, belief, slant, first) { CameraDistanceKnown = cameraDistanceMm is not null };
    }

    /// <summary>px per mm at <paramref name="heightMm"/> for a chord between two places, and its relative standard uncertainty.</summary>
    public (double PxPerMm, double RelativeU) Along(PicturePoint from, PicturePoint to, double heightMm) => Lengths.Along(from, to, heightMm);

    /// <summary>Whether one mistaken reference explains them all better than any camera that is believed in.</summary>
    private bool MoreLikelyWrong(CameraBelief belief, PictureSlant? slant)
    {
        var seen = Seen(references, frame, clickPx, 0);
        var camera = fit.LogEvidence - seen.Sum(reference => Elementary.Log(reference.UMm));
        var wrong = 0.0;
        foreach (var source in sources)
        {
            var one = seen.ToArray();
            foreach (var i in source) one[i] = one[i] with { UMm = Mistake * one[i].LengthMm };
            if (PoseFit.Of(new(one, slant), belief, roughly: true) is { } without)
            {
                wrong += MistakeRate * Elementary.Exp(without.LogEvidence - one.Sum(reference => Elementary.Log(reference.UMm)) - camera);
            }
        }

        return wrong > 1;
    }

    // What the picture's edges say is left out where no pose explains both them and the lengths.
    private static (PoseLikelihood Likelihood, PoseFit Fit)? Fit(SeenReference[] seen, CameraBelief belief, PictureSlant? slant)
    {
        foreach (var edges in slant is null ? [null] : new[] { slant, null })
        {
            var likelihood = new PoseLikelihood(seen, edges);
            if (PoseFit.Of(likelihood, belief) is { } fit) return (likelihood, fit);
        }

        return null;
    }

    private static SeenReference[] Seen(IReadOnlyList<ReferenceLength> references, PictureFrame frame, double clickPx, double between, double wider = 1) =>
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

    private static List<double> Weights(IReadOnlyList<ReferenceLength> references, double clickPx) => [.. references.Select(reference => 1 / Square(RelativeU(reference, clickPx)))];

    private static double HeightOf(IReadOnlyList<ReferenceLength> references, double clickPx)
    {
        if (references.All(reference => reference.HeightMm == references[0].HeightMm)) return references[0].HeightMm;
        var weights = Weights(references, clickPx);
        return references.Zip(weights, (reference, weight) => reference.HeightMm * weight).Sum() / weights.Sum();
    }

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
