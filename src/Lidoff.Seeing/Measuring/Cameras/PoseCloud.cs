using Lidoff.Numbers;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// Poses for known lengths so precise that hardly any draw explains them: what fits lies in a thin, bent valley. Draws that explain them roughly are moved into it while what was seen is
/// made to count more and more (sequential Monte Carlo, Del Moral, Doucet and Jasra 2006), each by steps along the difference of two others (differential evolution Markov chain, ter Braak 2006).
/// From around where they end, and a part from all that is believed, draws with weights are taken once more, which say how much each valley weighs.
/// </summary>
internal sealed class PoseCloud
{
    /// <summary>Below so many draws that count, in effect, the rest is not to be trusted.</summary>
    public const double Enough = 250;

    private const int Count = 500;
    private const double Start = 250;

    // Moves at each stage, and at the last, after every so many of which the cloud is kept.
    private const int Moves = 10;
    private const int LastMoves = 60;
    // The share of the last draws that is taken from around the cloud.
    private const double Near = 0.75;
    private const int Every = 10;

    // 2.38/√(2·5): ter Braak's step for five numbers; steps down to e to the −5 of it, as many of each size, get through a bend, and every third keeps its length
    // and leaps from one valley to another.
    private const double Longest = 0.75;
    private const double Shorter = 5;

    // A step's own width besides, in standard deviations of what is believed: so that no direction is ever lost.
    private const double Own = 1e-4;

    // A kind under which a pose is e to the −100 as likely adds nothing.
    private const double Nothing = 200;

    private readonly PoseLikelihood likelihood;
    private readonly CameraBelief belief;
    private readonly double[] own;
    private readonly double[][] spreads;
    private readonly double[][] widths;
    private readonly double[] heights;
    private readonly int seed;
    private readonly double[][] values = new double[Count][];
    private readonly double[] believed = new double[Count];
    private readonly double[] seen = new double[Count];
    private int draws;

    private PoseCloud(PoseLikelihood likelihood, CameraBelief belief, int seed)
    {
        (this.likelihood, this.belief, this.seed) = (likelihood, belief, seed);
        spreads = [.. belief.Kinds.Select(belief.Spreads)];
        own = [.. spreads[0].Select(spread => Own * spread)];
        widths = [.. spreads.Select(each => (double[])[.. each.Select(spread => 1 / spread)])];
        heights = [.. spreads.Select((each, kind) => belief.Kinds[kind].Weight / each.Aggregate((a, b) => a * b))];
    }

    /// <summary>Draws from around what fits, with weights as those that it starts from.</summary>
    /// <param name="drawn">Draws: logarithm of the weight, logarithm of the probability of what was seen, pose.</param>
    /// <param name="likelihood">What was seen.</param>
    /// <param name="belief">What is believed.</param>
    /// <param name="seed">Of the moves: others give nearly the same.</param>
    public static List<(double Log, double Seen, SeenPose Pose)> Of(List<(double Log, double Seen, SeenPose Pose)> drawn, PoseLikelihood likelihood, CameraBelief belief, int seed = 0) =>
        new PoseCloud(likelihood, belief, seed).Run(drawn);

    /// <summary>How many draws count in effect: (Σw)²/Σw² (Kish).</summary>
    public static double Counting(IReadOnlyList<double> logs)
    {
        var best = logs.Max();
        var (sum, squares) = (0.0, 0.0);
        foreach (var log in logs)
        {
            var weight = Elementary.Exp(log - best);
            (sum, squares) = (sum + weight, squares + (weight * weight));
        }

        return sum * sum / squares;
    }

    private List<(double Log, double Seen, SeenPose Pose)> Run(List<(double Log, double Seen, SeenPose Pose)> drawn)
    {
        var cloud = Moved(drawn);
        // The cloud knows where the valleys lie and how they bend, and hardly how much each of them weighs: few poses leap from one to another.
        var around = Around(PoseKernels.Of(cloud, own));
        double[] logs = [.. around.Select(draw => draw.Log)];
        if (Counting(logs) >= Start / 2) return around;
        // Where its shape is too odd for that, the cloud itself stands for what fits.
        var best = logs.Max();
        var each = best + Elementary.Log(logs.Sum(log => Elementary.Exp(log - best)) / cloud.Count);
        return [.. cloud.Select(at => Seen(at)).Where(one => double.IsFinite(one.Log)).Select(one => (each, one.Log, one.Pose))];
    }

    private (double Log, SeenPose Pose) Seen(double[] at)
    {
        var pose = CameraPose.From(at);
        var focal = Elementary.Exp(pose.LogFocal);
        if (focal < CameraBelief.WidestLens) return (double.NegativeInfinity, default);
        return (likelihood.Log(pose, focal, out var distance, out var u), new(0, pose, focal, distance, u));
    }

    // Draws that count too little, moved into what fits.
    private List<double[]> Moved(List<(double Log, double Seen, SeenPose Pose)> drawn)
    {
        double[] Logs(double share) => [.. drawn.Select(draw => draw.Log - ((1 - share) * draw.Seen))];
        var share = Largest(0, to => Counting(Logs(to)) >= Start);
        var picked = Picked(Logs(share));
        for (var i = 0; i < Count; i++)
        {
            var (_, log, pose) = drawn[picked[i]];
            (values[i], seen[i]) = (Values(pose.Pose), log);
            believed[i] = LogBelieved(values[i]);
        }

        while (share < 1)
        {
            for (var move = 0; move < Moves; move++) Move(share);
            var from = share;
            double[] Further(double to) => [.. seen.Select(log => (to - from) * log)];
            share = Largest(from, to => Counting(Further(to)) >= Count / 2.0);
            Keep(Picked(Further(share)));
        }

        var pool = new List<double[]>();
        for (var move = 1; move <= LastMoves; move++)
        {
            Move(1);
            if (move % Every == 0) pool.AddRange(values.Select(each => (double[])each.Clone()));
        }

        return pool;
    }

    // From around a cloud, and a part from all that is believed: so that no valley and no rare slant is ever lost.
    private List<(double Log, double Seen, SeenPose Pose)> Around(PoseKernels kernels)
    {
        var drawn = new List<(double Log, double Seen, SeenPose Pose)>();
        var points = NormalPoints.Of(NormalPoints.More, seed);
        var (near, share) = ((int)(Near * points.Count), Elementary.Log(points.Count));
        for (var i = 0; i < points.Count; i++)
        {
            double[] at = i < near ? kernels.Draw(i, near, points[i]) : Believed(points[i], (i - near + 0.5) / (points.Count - near));
            var (log, pose) = Seen(at);
            if (!double.IsFinite(log)) continue;
            var (prior, dense) = (LogBelieved(at), kernels.LogDensity(at));
            var top = Math.Max(prior, dense);
            var mixed = top + Elementary.Log(((1 - Near) * Elementary.Exp(prior - top)) + (Near * Elementary.Exp(dense - top)));
            drawn.Add((prior + log - mixed - share, log, pose));
        }

        return drawn;
    }

    // A pose of the kind that so much of all belief lies below.
    private double[] Believed(double[] point, double share)
    {
        var kind = 0;
        for (var below = belief.Kinds[0].Weight; below < share && kind < spreads.Length - 1; below += belief.Kinds[++kind].Weight) { }
        var centre = belief.Centre;
        return [.. point.Select((z, j) => centre[j] + (spreads[kind][j] * z))];
    }

    private static double[] Values(CameraPose pose) => [pose.Right, pose.Down, pose.LogFocal, pose.Bend, pose.Aspect];

    // The largest share for which it holds, and never so little more than before that it takes for ever.
    private static double Largest(double from, Func<double, bool> holds)
    {
        if (holds(1)) return 1;
        var (low, high) = (from, 1.0);
        for (var round = 0; round < 30; round++)
        {
            var middle = (low + high) / 2;
            if (holds(middle)) low = middle;
            else high = middle;
        }

        return Math.Max(low, from + 1e-6);
    }

    // Every one as often as its weight says, evenly spaced.
    private static int[] Picked(double[] logs)
    {
        var best = logs.Max();
        double[] weights = [.. logs.Select(log => Elementary.Exp(log - best))];
        var total = weights.Sum();
        var picked = new int[Count];
        var (at, below) = (0, weights[0]);
        for (var i = 0; i < Count; i++)
        {
            while (below < (i + 0.5) / Count * total && at < weights.Length - 1) below += weights[++at];
            picked[i] = at;
        }

        return picked;
    }

    private void Keep(int[] picked)
    {
        var (v, b, s) = (picked.Select(at => values[at]).ToArray(), picked.Select(at => believed[at]).ToArray(), picked.Select(at => seen[at]).ToArray());
        for (var i = 0; i < Count; i++) (values[i], believed[i], seen[i]) = (v[i], b[i], s[i]);
    }

    private void Move(double share)
    {
        draws++;
        for (var i = 0; i < Count; i++)
        {
            var (one, other) = ((int)(Even(0, i) * Count), (int)(Even(1, i) * Count));
            if (one == other || one == i || other == i) continue;
            var length = draws % 3 == 2 ? 1 : Longest * Elementary.Exp(-Shorter * Even(2, i));
            var next = new double[CameraPose.Count];
            for (var j = 0; j < next.Length; j++) next[j] = values[i][j] + (length * (values[one][j] - values[other][j])) + (own[j] * ((2 * Even(3 + j, i)) - 1));
            var (log, _) = Seen(next);
            if (!double.IsFinite(log)) continue;
            var prior = LogBelieved(next);
            if (prior - believed[i] + (share * (log - seen[i])) < Elementary.Log(Math.Max(1e-300, Even(8, i)))) continue;
            (values[i], believed[i], seen[i]) = (next, prior, log);
        }
    }

    private double Even(int what, int at) => Scatter.Even(409 + what + (seed * 16), draws, at);

    private double LogBelieved(double[] at)
    {
        var centre = belief.Centre;
        Span<double> from = stackalloc double[CameraPose.Count];
        for (var j = 0; j < from.Length; j++) from[j] = at[j] - centre[j];
        var sum = 0.0;
        for (var kind = 0; kind < widths.Length; kind++)
        {
            var square = 0.0;
            for (var j = 0; j < from.Length; j++) square += from[j] * from[j] * widths[kind][j] * widths[kind][j];
            if (square < Nothing) sum += heights[kind] * Elementary.Exp(-0.5 * square);
        }

        return Elementary.Log(Math.Max(1e-300, sum));
    }
}
