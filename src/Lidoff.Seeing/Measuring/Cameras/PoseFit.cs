using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// What known lengths and the picture leave open of the camera: poses with weights. Each kind of camera is drawn at fixed points, half
/// from what is believed of it and half from around what fits best, and each draw counts as likely as it is (importance sampling).
/// </summary>
internal sealed class PoseFit
{
    // Draws that together hold less than this count for nothing; of many draws, this more.
    private const double Dust = 1e-6;
    private const double CoarseDust = 1e-3;

    // More draws than usual are thinned to two to the so many.
    private const int Most = 4096;
    private const int Halvings = 10;

    // Where fewer of the usual draws count, in effect, more are taken.
    private const double Few = 500;
    private const double FewRoughly = 80;

    private const double Seldom = 0.05;

    // Width of a rung in the logarithm of the focal length, and draws on each from around each best pose.
    private const double WidestRung = 0.1;
    private const int OnRung = 16;

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
    /// <param name="likelihood">What was seen.</param>
    /// <param name="belief">What is believed.</param>
    /// <param name="roughly">For how likely what was seen is, and not for what is measured by it: with fewer draws.</param>
    /// <param name="seed">Of the draws: others give nearly the same.</param>
    public static PoseFit? Of(PoseLikelihood likelihood, CameraBelief belief, bool roughly = false, int seed = 0)
    {
        var drawn = new List<(double Log, double Seen, SeenPose Pose)>();
        var misfit = double.PositiveInfinity;
        if (likelihood.HasTarget)
        {
            foreach (var lens in belief.Kinds.GroupBy(kind => (kind.Bend, kind.Aspect))) misfit = Math.Min(misfit, Climb(likelihood, belief, [.. lens], drawn));
        }

        else
        {
            List<PoseMode>[] modes = [.. belief.Kinds.Select(kind => likelihood.Tells ? PoseSearch.Modes(likelihood, belief.Centre, belief.Spreads(kind), []) : [])];
            misfit = likelihood.Tells ? modes.SelectMany(each => each).Select(mode => mode.Misfit).DefaultIfEmpty(double.PositiveInfinity).Min() : 0;
            Draw(likelihood, belief, modes, NormalPoints.Of(NormalPoints.Count, seed), drawn);
            if (likelihood.Tells && Counts(drawn) < (roughly ? FewRoughly : Few))
            {
                drawn.Clear();
                Draw(likelihood, belief, modes, NormalPoints.Of(NormalPoints.More, seed), drawn);
                if (!roughly && Counts(drawn) is > 0 and < PoseCloud.Enough) drawn = PoseCloud.Of(drawn, likelihood, belief, seed);
            }
        }

        var best = drawn.Count == 0 ? double.NegativeInfinity : drawn.Max(draw => draw.Log);
        if (!double.IsFinite(best)) return null;
        var total = drawn.Sum(draw => Elementary.Exp(draw.Log - best));
        // Of many draws all those together hold less than a thousandth.
        var dust = drawn.Count > 2 * Most ? CoarseDust : Dust;
        var poses = new List<SeenPose>();
        var kept = 0.0;
        foreach (var (log, _, pose) in drawn)
        {
            var weight = Elementary.Exp(log - best) / total;
            if (weight * drawn.Count < dust) continue;
            kept += weight;
            poses.Add(pose with { Weight = weight });
        }

        SeenPose[] all = [.. poses.Select(pose => pose with { Weight = pose.Weight / kept })];
        return new(poses.Count > Most ? PoseThinning.To(all, Halvings) : all, misfit, best + Elementary.Log(total));
    }

    private static double Counts(List<(double Log, double Seen, SeenPose Pose)> drawn) => drawn.TrueForAll(draw => !double.IsFinite(draw.Log)) ? 0 : PoseCloud.Counting([.. drawn.Select(draw => draw.Log)]);

    // Every kind of camera, drawn at points.
    private static void Draw(PoseLikelihood likelihood, CameraBelief belief, List<PoseMode>[] modes, IReadOnlyList<double[]> points, List<(double Log, double Seen, SeenPose Pose)> drawn)
    {
        for (var kind = 0; kind < modes.Length; kind++) Draw(likelihood, belief.Centre, belief.Spreads(belief.Kinds[kind]), modes[kind], belief.Kinds[kind].Weight, points, drawn);
    }

    /// <summary>The same poses where more is believed of some than was.</summary>
    public PoseFit Weighed(Func<CameraPose, double> times)
    {
        SeenPose[] weighed = [.. Poses.Select(pose => pose with { Weight = pose.Weight * times(pose.Pose) })];
        var total = weighed.Sum(pose => pose.Weight);
        return new([.. weighed.Select(pose => pose with { Weight = pose.Weight / total })], Misfit, LogEvidence);
    }

    /// <summary>These poses and others, half and half.</summary>
    public PoseFit Beside(PoseFit other) => new([.. Poses.Concat(other.Poses).Select(pose => pose with { Weight = pose.Weight / 2 })], Misfit, LogEvidence);

    /// <summary>The value below which a share of the poses lies.</summary>
    public double Quantile(Func<CameraPose, double> value, double share)
    {
        var below = 0.0;
        foreach (var (at, weight) in Poses.Select(pose => (At: value(pose.Pose), pose.Weight)).OrderBy(each => each.At).ThenBy(each => each.Weight))
        {
            below += weight;
            if (below >= share) return at;
        }

        return Poses.Max(pose => value(pose.Pose));
    }

    /// <summary>Weighted mean of something over all poses.</summary>
    public double Mean(Func<CameraPose, double> value) => Poses.Sum(pose => pose.Weight * value(pose.Pose));

    /// <summary>Probability of something over all poses.</summary>
    public double Share(Func<CameraPose, bool> holds) => Poses.Sum(pose => holds(pose.Pose) ? pose.Weight : 0);

    private static void Draw(
        PoseLikelihood likelihood, double[] centre, double[] spreads, List<PoseMode> modes, double weight, IReadOnlyList<double[]> points, List<(double Log, double Seen, SeenPose Pose)> drawn)
    {
        var prior = Elementary.Log(weight);
        // Cameras that are hardly ever met get by with fewer draws.
        var count = weight < Seldom ? points.Count / 3 : points.Count;
        prior -= Elementary.Log(count);
        var widths = spreads.Sum(Elementary.Log);
        for (var index = 0; index < count; index++)
        {
            var point = points[index];
            // Whole runs of the sequence each way: every second point would lie on one side of the first axis.
            double[] values;
            if (modes.Count == 0 || index < count / 2)
            {
                values = new double[point.Length];
                for (var j = 0; j < values.Length; j++) values[j] = centre[j] + (spreads[j] * point[j]);
            }
            else
            {
                values = modes[(index - (count / 2)) * modes.Count / (count - (count / 2))].Draw(point);
            }

            var pose = CameraPose.From(values);
            var focal = Elementary.Exp(pose.LogFocal);
            if (focal < CameraBelief.WidestLens) continue;
            var log = likelihood.Log(pose, focal, out var distance, out var u);
            if (!double.IsFinite(log)) continue;
            var believed = LogBelieved(values, centre, spreads, widths);
            drawn.Add((prior + log + believed - LogDrawn(values, believed, modes), log, new(0, pose, focal, distance, u)));
        }
    }

    // A target ties slant and lens so closely to the focal length that draws for all focal lengths at once would miss: the belief in it is
    // taken apart into narrow ones, rung by rung, and each is drawn from around what fits best there. Kinds that differ in their hands alone
    // are drawn together, from around what fits the freest hand. Gives the least misfit.
    private static double Climb(PoseLikelihood likelihood, CameraBelief belief, CameraKind[] kinds, List<(double Log, double Seen, SeenPose Pose)> drawn)
    {
        var centre = belief.Centre;
        var rung = Math.Min(WidestRung, 0.8 * belief.LogFocalSpread);
        var within = 0.6 * rung;
        var around = Math.Sqrt((belief.LogFocalSpread * belief.LogFocalSpread) - (within * within));
        var reach = (int)Math.Ceiling(2.6 * around / rung);
        var total = Enumerable.Range(-reach, (2 * reach) + 1).Sum(step => Elementary.Exp(-0.5 * Square(step * rung / around)));
        double[][] spreads = [.. kinds.Select(kind => belief.Spreads(kind)).Select(each => (double[])[each[0], each[1], within, each[3], each[4]])];
        double[] widths = [.. spreads.Select(each => each.Sum(Elementary.Log))];
        var freest = spreads.MaxBy(each => each[0])!;
        List<PoseMode> last = [];
        var misfit = double.PositiveInfinity;
        for (var step = -reach; step <= reach; step++)
        {
            double[] here = [centre[0], centre[1], centre[2] + (step * rung), centre[3], centre[4]];
            var modes = PoseSearch.Modes(likelihood, here, freest, last);
            if (modes.Count == 0) continue;
            last = modes;
            misfit = Math.Min(misfit, modes.Min(mode => mode.Misfit + Square(step * rung / around)));
            var prior = (-0.5 * Square(step * rung / around)) - Elementary.Log(total * OnRung * modes.Count);
            for (var index = 0; index < OnRung * modes.Count; index++)
            {
                // Other points on every rung; pairs that lean opposite ways stay together.
                var values = modes[index / OnRung].Draw(NormalPoints.All[(((step + reach) * OnRung) + (index % OnRung)) % NormalPoints.Count]);
                var pose = CameraPose.From(values);
                var focal = Elementary.Exp(pose.LogFocal);
                if (focal < CameraBelief.WidestLens) continue;
                var log = likelihood.Log(pose, focal, out var distance, out var u);
                if (!double.IsFinite(log)) continue;
                var believed = 0.0;
                for (var kind = 0; kind < kinds.Length; kind++) believed += kinds[kind].Weight * Elementary.Exp(LogBelieved(values, here, spreads[kind], widths[kind]));
                drawn.Add((prior + log + Elementary.Log(Math.Max(1e-300, believed)) - LogAround(values, modes), log, new(0, pose, focal, distance, u)));
            }
        }

        return misfit;
    }

    private static double LogAround(double[] values, List<PoseMode> modes)
    {
        var top = modes.Max(mode => mode.LogDensity(values));
        return top + Elementary.Log(modes.Sum(mode => Elementary.Exp(Math.Max(-700, mode.LogDensity(values) - top))) / modes.Count);
    }

    private static double Square(double x) => x * x;

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

    private static double LogBelieved(double[] values, double[] centre, double[] spreads, double widths)
    {
        var sum = -widths;
        for (var j = 0; j < values.Length; j++)
        {
            var z = (values[j] - centre[j]) / spreads[j];
            sum -= 0.5 * z * z;
        }

        return sum;
    }
}
