using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// The scale of one picture, fitted to one or several known lengths, with its doubt: click errors, errors of the references,
/// unequal axes, slant, lens and the camera's distance where heights differ. First order in everything but that distance, which is
/// run through a ladder of values (<see cref="CameraDistance"/>).
/// </summary>
public sealed class ScaleFit
{
    // A clean picture is called warped once in five hundred; below that the references are averaged.
    private const double OnceInFiveHundred = 2.878;

    // Short of that, references further apart than chance brings them once in fifty are averaged with the scatter they show:
    // two that differ by three times their doubts must not make the scale better known than either alone.
    private const double OnceInFifty = 2.054;

    // Heights are typed from drawings or estimated by eye: standard uncertainty as a share of the height difference.
    private const double HeightSpread = 0.05;

    // Two directions: less than 30° apart they cannot tell unequal axes from a wrong length.
    private const double ApartCosineOfDouble = 0.5;

    // Three references always fit a slope: whether one of them is wrong instead stays open, and both are said.
    private const int EnoughForWarp = 3;

    // Two references that differ by more are more likely a wrong length or height than a slant: it would take 21°.
    private const double BelievableWarp = 0.07;

    private readonly IReadOnlyList<ReferenceLength> references;
    private readonly PictureFrame frame;
    private readonly double clickPx;
    private readonly CameraDistance distance;
    private readonly PictureShape shape;
    private readonly IReadOnlyList<(double Weight, double CameraMm, ShapeFit Fit)> fits;
    private readonly double meanHeight;

    private ScaleFit(
        IReadOnlyList<ReferenceLength> references, PictureFrame frame, double clickPx, CameraDistance distance, double meanHeight)
    {
        this.references = references;
        this.frame = frame;
        this.clickPx = clickPx;
        this.distance = distance;
        this.meanHeight = meanHeight;
        var factors = references.Select(reference => PictureShape.Factors(reference.From, reference.To, frame)).ToList();
        var limit = MisfitLimit(references.Count - 1, OnceInFiveHundred);
        var chosen = (Shape: PictureShape.Square, Fits: Fit(PictureShape.Square, factors, 0));
        if (BestMisfit(chosen.Fits) > limit)
        {
            var warped = Shapes(factors).Select(candidate => (Shape: candidate, Fits: Fit(candidate, factors, 0))).Where(candidate => BestMisfit(candidate.Fits) <= limit).ToList();
            var believed = warped.Count > 0 && !(references.Count == 2 && Spread() > BelievableWarp);
            Disagrees = !believed;
            chosen = believed ? warped.MaxBy(candidate => Evidence(candidate.Fits)) : (PictureShape.Square, Fit(PictureShape.Square, factors, Between(factors)));
        }
        else if (BestMisfit(chosen.Fits) > MisfitLimit(references.Count - 1, OnceInFifty))
        {
            Scattered = true;
            chosen = (PictureShape.Square, Fit(PictureShape.Square, factors, Between(factors)));
        }

        shape = chosen.Shape;
        Disagrees |= (shape.Tilt || shape.Lens) && references.Count <= EnoughForWarp;
        var best = chosen.Fits.Max(fit => fit.Fit.LogEvidence);
        var total = chosen.Fits.Sum(fit => fit.Weight * Elementary.Exp(fit.Fit.LogEvidence - best));
        fits = [.. chosen.Fits.Select(fit => (fit.Weight * Elementary.Exp(fit.Fit.LogEvidence - best) / total, fit.CameraMm, fit.Fit))];
    }

    /// <summary>True when the scale was found to differ with direction.</summary>
    public bool UnequalAxes => shape.Axes;

    /// <summary>True when the scale was found to change across the picture.</summary>
    public bool Tilted => shape.Tilt;

    /// <summary>True when the scale was found to change with the radius.</summary>
    public bool Bent => shape.Lens;

    /// <summary>True when the references contradict one another and nothing about camera or lens settles it.</summary>
    public bool Disagrees { get; }

    /// <summary>True when the references lie so far apart that their own scatter was taken into the doubt, though not so far that one must be wrong.</summary>
    public bool Scattered { get; }

    /// <summary>Relative difference of the scale between the two directions where it is largest and smallest.</summary>
    public double AxesDifference => 2 * Length(1, 2);

    /// <summary>Relative change of the scale across the long side, along the slope.</summary>
    public double SlopeAcross => 2 * Length(3, 4);

    /// <summary>Relative change of length from the middle to the end of the long side.</summary>
    public double LensGrowth => Math.Abs(fits.Sum(fit => fit.Weight * fit.Fit.Coefficient(5)));

    /// <summary>Relative difference between the largest and the smallest scale that single references give.</summary>
    public double ReferenceSpread => Elementary.Exp(Spread()) - 1;

    /// <summary>Mean height of the references above the board, mm, weighted as they count.</summary>
    public double ReferenceHeightMm => meanHeight;

    /// <summary>Longest reference, px.</summary>
    public double LongestReferencePx => references.Max(reference => reference.From.DistanceTo(reference.To));

    /// <summary>True when a person gave the camera's distance.</summary>
    public bool CameraDistanceKnown => distance.Typed;

    /// <summary>Fits the scale. The references have been checked: at least one, each of two different places and a length above zero.</summary>
    /// <param name="references">Known lengths.</param>
    /// <param name="frame">The picture.</param>
    /// <param name="clickPx">Standard uncertainty of each clicked end, px, where a reference does not carry its own.</param>
    /// <param name="cameraDistanceMm">Distance to the camera, mm, above every height, or null.</param>
    /// <param name="tallestMm">Tallest thing that will be measured with it, mm.</param>
    public static ScaleFit To(
        IReadOnlyList<ReferenceLength> references, PictureFrame frame, double clickPx, double? cameraDistanceMm, double tallestMm)
    {
        Guard.That(references.Count > 0, "at least one reference");
        Guard.NotNegative(clickPx);
        var weights = references.Select(reference => 1 / Square(RelativeU(reference, clickPx))).ToList();
        var total = weights.Sum();
        var meanHeight = references.Zip(weights, (reference, weight) => reference.HeightMm * weight).Sum() / total;
        if (references.All(reference => reference.HeightMm == references[0].HeightMm)) meanHeight = references[0].HeightMm;
        var level = references.Zip(weights, (reference, weight) => weight * LogScale(reference)).Sum() / total;
        var tallest = Math.Max(tallestMm, references.Max(reference => reference.HeightMm));
        var longSide = Math.Max(frame.Width, frame.Height) / Elementary.Exp(level);
        return new(references, frame, clickPx, CameraDistance.From(cameraDistanceMm, longSide, tallest), meanHeight);
    }

    /// <summary>px per mm at <paramref name="heightMm"/> for a chord between two places, and its relative standard uncertainty.</summary>
    public (double PxPerMm, double RelativeU) Along(PicturePoint from, PicturePoint to, double heightMm)
    {
        var parts = Mixture(PictureShape.Factors(from, to, frame), heightMm);
        var mean = parts.Sum(part => part.Weight * part.Scale);
        var variance = parts.Sum(part => part.Weight * (Square(part.Scale * part.RelativeU) + Square(part.Scale - mean)));
        return (mean, Math.Sqrt(variance) / mean);
    }

    /// <summary>The target's length as a mixture of normals over camera distances: weight, mean and standard deviation, mm.</summary>
    internal IReadOnlyList<(double Weight, double Mean, double Sd)> Length(TargetLength target)
    {
        var px = target.From.DistanceTo(target.To);
        var own = 2 * Square(clickPx / px);
        return
        [
            .. Mixture(PictureShape.Factors(target.From, target.To, frame), target.HeightMm)
                .Select(part => (part.Weight, px / part.Scale, px / part.Scale * Math.Sqrt(own + Square(part.RelativeU)))),
        ];
    }

    private List<(double Weight, double Scale, double RelativeU)> Mixture(double[] factors, double heightMm)
    {
        var step = heightMm - meanHeight;
        var flat = step == 0 && references.All(reference => reference.HeightMm == meanHeight);
        var parts = new List<(double, double, double)>();
        foreach (var (weight, camera, fit) in fits)
        {
            var (value, u) = fit.Level(factors);
            var height = HeightSpread * step / (camera - heightMm);
            parts.Add((weight, Elementary.Exp(value) * camera / (camera - heightMm), Math.Sqrt((u * u) + Square(height))));
            if (flat) return [(1, parts[0].Item2, parts[0].Item3)];
        }

        return parts;
    }

    private List<(double Weight, double CameraMm, ShapeFit Fit)> Fit(PictureShape candidate, List<double[]> factors, double between)
    {
        var u = references.Select(reference => Math.Sqrt(Square(RelativeU(reference, clickPx)) + Square(between))).ToList();
        return
        [
            .. distance.Ladder.Select(rung => (rung.Weight, rung.Mm, ShapeFit.Of(
                candidate,
                factors,
                [.. references.Select(reference => LogScale(reference) - Elementary.Log(rung.Mm / (rung.Mm - reference.HeightMm)))],
                u))),
        ];
    }

    /// <summary>
    /// The scatter between references that makes their misfit what chance would give (Mandel and Paule's method for laboratories that
    /// disagree, Anal. Chem. 42, 1970): then a short honest reference counts as much as a long mistaken one.
    /// </summary>
    private double Between(List<double[]> factors)
    {
        var (low, high) = (0.0, Spread());
        for (var round = 0; round < 40; round++)
        {
            var middle = (low + high) / 2;
            if (BestMisfit(Fit(PictureShape.Square, factors, middle)) > references.Count - 1) low = middle;
            else high = middle;
        }

        return high;
    }

    /// <summary>The shapes besides the square one that these references could tell apart.</summary>
    private static List<PictureShape> Shapes(List<double[]> factors)
    {
        var crossed = factors.Any(a => factors.Any(b => (a[1] * b[1]) + (a[2] * b[2]) < ApartCosineOfDouble));
        var shapes = new List<PictureShape>();
        if (crossed) shapes.Add(new(true, false, false));
        if (factors.Count >= 3) shapes.AddRange([new(false, true, false), new(false, false, true)]);
        if (factors.Count >= 4 && crossed) shapes.AddRange([new(true, true, false), new(true, false, true)]);
        if (factors.Count >= 5) shapes.Add(new(false, true, true));
        if (factors.Count >= 6 && crossed) shapes.Add(new(true, true, true));
        return shapes;
    }

    private double Length(int first, int second) => Math.Sqrt(
        Square(fits.Sum(fit => fit.Weight * fit.Fit.Coefficient(first))) + Square(fits.Sum(fit => fit.Weight * fit.Fit.Coefficient(second))));

    private double Spread()
    {
        var levels = references.Select(LogScale).ToList();
        return levels.Max() - levels.Min();
    }

    private static double Evidence(IReadOnlyList<(double Weight, double CameraMm, ShapeFit Fit)> fits)
    {
        var best = fits.Max(fit => fit.Fit.LogEvidence);
        return best + Elementary.Log(fits.Sum(fit => fit.Weight * Elementary.Exp(fit.Fit.LogEvidence - best)));
    }

    private static double BestMisfit(IReadOnlyList<(double Weight, double CameraMm, ShapeFit Fit)> fits) => fits.Min(fit => fit.Fit.Misfit);

    /// <summary>χ² that a clean picture passes as seldom as a normal value passes <paramref name="rarity"/> (Wilson and Hilferty's approximation).</summary>
    private static double MisfitLimit(int degrees, double rarity)
    {
        if (degrees == 0) return double.PositiveInfinity;
        var spread = 2.0 / (9 * degrees);
        var root = 1 - spread + (rarity * Math.Sqrt(spread));
        return degrees * root * root * root;
    }

    private static double LogScale(ReferenceLength reference) => Elementary.Log(reference.From.DistanceTo(reference.To) / reference.LengthMm);

    // Never exactly zero, so that a reference without any error still has a finite weight.
    private static double RelativeU(ReferenceLength reference, double clickPx) => Math.Max(1e-6, Math.Sqrt(
        (2 * Square((reference.ClickPx ?? clickPx) / reference.From.DistanceTo(reference.To))) + Square(reference.UMm / reference.LengthMm)));

    private static double Square(double x) => x * x;
}
