using Lidoff.Seeing.Measuring.Cameras;

namespace Lidoff.Seeing.Measuring;

/// <summary>What of a camera's slant, lens and pixels is worth words beside a length.</summary>
internal sealed class CameraWords
{
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

    // What is called established has these odds.
    private const double Sure = 0.95;

    private readonly PoseFit fit;
    private readonly PoseLikelihood likelihood;
    private readonly PictureFrame frame;
    private readonly Lazy<double> unequalAxes;
    private readonly Lazy<bool> slantIsStrong;
    private readonly Lazy<bool> lensIsStrong;
    private readonly Lazy<(CameraPose Pose, double DistanceMm)[]> square;
    private readonly Lazy<(CameraPose Pose, double DistanceMm)[]> straight;

    /// <summary>For a picture.</summary>
    /// <param name="fit">Poses with weights.</param>
    /// <param name="likelihood">What they were fitted to.</param>
    /// <param name="frame">The picture.</param>
    /// <param name="axesShown">Relative difference of the scale between two directions that a few known lengths are sure of, 0 for none.</param>
    /// <param name="axesDifference">How large it then is.</param>
    public CameraWords(PoseFit fit, PoseLikelihood likelihood, PictureFrame frame, double axesShown, double axesDifference)
    {
        (this.fit, this.likelihood, this.frame) = (fit, likelihood, frame);
        unequalAxes = new(() => fit.Share(pose => Math.Abs(pose.Aspect) > WorthWords / 2) > Sure ? Math.Abs(fit.Mean(pose => pose.Aspect)) : axesShown > WorthWords ? axesDifference : 0);
        slantIsStrong = new(() => fit.Share(pose => pose.SlopeAcross > StrongSlope || pose.SlantDegrees > StrongSlant) > Sure);
        lensIsStrong = new(() => fit.Share(pose => Math.Abs(pose.Bend) > StrongBend) > Sure);
        square = new(() => Without(pose => pose with { Right = 0, Down = 0 }));
        straight = new(() => Without(pose => pose with { Bend = 0 }));
    }

    /// <summary>Relative difference of the scale between two directions where it is worth words, 0 otherwise.</summary>
    public double UnequalAxes => unequalAxes.Value;

    /// <summary>Whether the slant is so strong that no length of the picture should be taken without it.</summary>
    public bool SlantIsStrong => slantIsStrong.Value;

    /// <summary>The same of the lens.</summary>
    public bool LensIsStrong => lensIsStrong.Value;

    /// <summary>Whether the slant, and whether the lens, move this length against what set the scale.</summary>
    public (bool Slant, bool Lens) Moves(TargetLength target)
    {
        var chord = SeenChord.Of(target.From, target.To, frame);
        var (slant, lens) = (new Shift(), new Shift());
        for (var i = 0; i < fit.Poses.Count; i++)
        {
            var pose = fit.Poses[i];
            var real = (pose.DistanceMm - (target.HeightMm * pose.Pose.PerHeight)) * pose.Pose.Unit(chord, pose.Focal);
            slant.Add(pose.Weight, real / Plainly(square.Value[i], pose.Focal));
            lens.Add(pose.Weight, real / Plainly(straight.Value[i], pose.Focal));
        }

        return (slant.IsWorthWords, lens.IsWorthWords);

        double Plainly((CameraPose Pose, double DistanceMm) without, double focal) => (without.DistanceMm - (target.HeightMm * without.Pose.PerHeight)) * without.Pose.Unit(chord, focal);
    }

    // Every pose without its slant, or without its lens, and how far away the board then was: the same for every length of the picture.
    private (CameraPose Pose, double DistanceMm)[] Without(Func<CameraPose, CameraPose> what) => [.. fit.Poses.Select(pose =>
    {
        var plain = what(pose.Pose);
        return (plain, likelihood.Distance(plain, pose.Focal).Item1);
    })];

    // By how much a length is longer than it would be without slant or lens, over all poses.
    private struct Shift
    {
        private double mean, above, below, kept;

        public readonly bool IsWorthWords => Math.Abs(mean) > WorthMove * kept && Math.Max(above, below) > Likely * kept;

        public void Add(double weight, double times)
        {
            if (!double.IsFinite(times)) return;
            kept += weight;
            mean += weight * (times - 1);
            if (times - 1 > LeastMove) above += weight;
            if (times - 1 < -LeastMove) below += weight;
        }
    }
}
