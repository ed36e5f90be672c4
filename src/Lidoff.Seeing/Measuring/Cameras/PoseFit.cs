using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// What known lengths and the picture leave open of the camera: poses with weights. Each kind of camera is drawn at fixed points, half
/// from what is believed of it and half from around what fits best, and each draw counts as likely as it is (importance sampling).
/// </summary>
internal sealed class PoseFit
{
    // Draws that together hold less than this count for nothing.
    private const double Dust = 1e-6;

    private const double Seldom = 0.05;

    private PoseFit(IReadOnlyList<SeenPose> poses, double misfit, double logEvidence)
    {
        Poses = poses;
        Misfit = misfit;
        LogEvidence = logEvidence;
    }

    /// <summary>Poses; weights sum to one.</summary>
    public IReadOnlyList<SeenPose> Poses { get; }

    /// <summary>Least χ² over all kinds of cameras, priors included.</summary>
    public double Misfit { get; }

    /// <summary>Logarithm of the probability of the known lengths under what is believed of cameras, up to what all fits of as many lengths share.</summary>
    public double LogEvidence { get; }

    /// <summary>Fits. Null where no pose explains the lengths at all.</summary>
    public static PoseFit? Of(PoseLikelihood likelihood, CameraBelief belief)
    {
        var drawn = new List<(double Log, SeenPose Pose)>();
        var misfit = double.PositiveInfinity;
        for (var kind = 0; kind < CameraBelief.Kinds.Count; kind++)
        {
            var spreads = belief.Spreads(CameraBelief.Kinds[kind]);
            List<PoseMode> modes = likelihood.Tells ? PoseSearch.Modes(likelihood, belief.Centre, spreads) : [];
            if (!likelihood.Tells) misfit = 0;
            if (modes.Count > 0) misfit = Math.Min(misfit, modes.Min(mode => mode.Misfit));
            Draw(likelihood, belief.Centre, spreads, modes, kind, drawn);
        }

        var best = drawn.Count == 0 ? double.NegativeInfinity : drawn.Max(draw => draw.Log);
        if (!double.IsFinite(best)) return null;
        var total = drawn.Sum(draw => Elementary.Exp(draw.Log - best));
        var poses = new List<SeenPose>();
        var kept = 0.0;
        foreach (var (log, pose) in drawn)
        {
            var weight = Elementary.Exp(log - best) / total;
            if (weight * drawn.Count < Dust) continue;
            kept += weight;
            poses.Add(pose with { Weight = weight });
        }

        return new([.. poses.Select(pose => pose with { Weight = pose.Weight / kept })], misfit, best + Elementary.Log(total));
    }

    /// <summary>Weighted mean of something over all poses.</summary>
    public double Mean(Func<CameraPose, double> value) => Poses.Sum(pose => pose.Weight * value(pose.Pose));

    /// <summary>Probability of something over all poses.</summary>
    public double Share(Func<CameraPose, bool> holds) => Poses.Sum(pose => holds(pose.Pose) ? pose.Weight : 0);

    private static void Draw(
        PoseLikelihood likelihood, double[] centre, double[] spreads, List<PoseMode> modes, int kind, List<(double Log, SeenPose Pose)> drawn)
    {
        var prior = Elementary.Log(CameraBelief.Kinds[kind].Weight);
        // Cameras that are hardly ever met get by with fewer draws.
        var count = CameraBelief.Kinds[kind].Weight < Seldom ? NormalPoints.Count / 3 : NormalPoints.Count;
        prior -= Elementary.Log(count);
        for (var index = 0; index < count; index++)
        {
            var point = NormalPoints.All[index];
            // Whole runs of the sequence each way: every second point would lie on one side of the first axis.
            double[] values = modes.Count == 0 || index < count / 2
                ? [.. point.Select((z, j) => centre[j] + (spreads[j] * z))]
                : modes[(index - (count / 2)) * modes.Count / (count - (count / 2))].Draw(point);
            var pose = CameraPose.From(values);
            var focal = Elementary.Exp(pose.LogFocal);
            if (focal < CameraBelief.WidestLens) continue;
            var log = likelihood.Log(pose, focal, out var distance, out var u);
            if (!double.IsFinite(log)) continue;
            var believed = LogBelieved(values, centre, spreads);
            drawn.Add((prior + log + believed - LogDrawn(values, believed, modes), new(0, pose, focal, distance, u)));
        }
    }

    private static double LogDrawn(double[] values, double believed, List<PoseMode> modes)
    {
        if (modes.Count == 0) return believed;
        // Below e to the −40 of the largest, a part changes no digit.
        Span<double> around = stackalloc double[modes.Count];
        for (var i = 0; i < modes.Count; i++) around[i] = modes[i].LogDensity(values);
        var top = believed;
        foreach (var log in around) top = Math.Max(top, log);
        var sum = 0.5 * Elementary.Exp(believed - top);
        foreach (var log in around)
        {
            if (log > top - 40) sum += 0.5 / modes.Count * Elementary.Exp(log - top);
        }

        return top + Elementary.Log(sum);
    }

    private static double LogBelieved(double[] values, double[] centre, double[] spreads)
    {
        var sum = 0.0;
        for (var j = 0; j < values.Length; j++)
        {
            var z = (values[j] - centre[j]) / spreads[j];
            sum -= (0.5 * z * z) + Elementary.Log(spreads[j]);
        }

        return sum;
    }
}
