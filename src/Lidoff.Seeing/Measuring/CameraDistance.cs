using Lidoff.Numbers;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// What is known of the distance between board and entrance pupil: a log-normal belief, laid out as a fixed ladder of distances
/// with weights. Something that stands h above the board is drawn larger by Z/(Z − h).
/// </summary>
internal sealed class CameraDistance
{
    /// <summary>Relative standard uncertainty of a typed distance: the pupil sits inside the lens, a centimetre or so from where a ruler starts.</summary>
    public const double TypedSpread = 0.03;

    /// <summary>
    /// Where nobody measured it: median 1.5 times the long side of what the picture shows, give or take a factor 1.8 (one standard
    /// deviation). A phone's wide lens stands at 0.7 of it, a macro lens at three times, a microscope beyond. A prior of ours.
    /// </summary>
    public const double UnknownInLongSides = 1.5;

    /// <summary>Standard deviation of the logarithm of that.</summary>
    public const double UnknownSpread = 0.6;

    /// <summary>Relative standard uncertainty by the focal length in the camera's own data: rounded to whole mm, and focusing near lengthens it. A judgement.</summary>
    public const double DataSpread = 0.08;

    /// <summary>
    /// The same where a program may have cropped the picture since: it then shows as much as is usual after cropping, a fifth less of each side, give or take a quarter
    /// (nothing to a half is cut off). A judgement.
    /// </summary>
    public const double CroppedTimes = 1.25;

    /// <summary>Standard deviation of the logarithm of that.</summary>
    public const double CroppedSpread = 0.25;

    private CameraDistance(IReadOnlyList<(double Weight, double Mm)> ladder) => Ladder = ladder;

    /// <summary>Distances, mm, with weights that sum to one.</summary>
    public IReadOnlyList<(double Weight, double Mm)> Ladder { get; }

    /// <summary>The belief for a picture whose camera's distance nobody measured.</summary>
    /// <param name="longSideMm">Rough length of the picture's long side on the board, mm.</param>
    /// <param name="tallestMm">Tallest thing measured, mm: the camera is above it.</param>
    public static CameraDistance Unknown(double longSideMm, double tallestMm)
    {
        var median = UnknownInLongSides * longSideMm;
        var steps = Enumerable.Range(-12, 25).Select(step => step / 4.0).ToList();
        var total = steps.Sum(NormalDistribution.Density);
        return new([.. steps.Select(z => (NormalDistribution.Density(z) / total, Math.Max(0, tallestMm) + (median * Elementary.Exp(UnknownSpread * z))))]);
    }
}
