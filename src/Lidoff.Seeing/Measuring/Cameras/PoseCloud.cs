using Lidoff.Numbers;
using Lidoff.Seeing.Rendering;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>
/// Poses for known lengths so precise that hardly any draw explains them: what fits lies in a thin, bent valley. Draws that explain them roughly are moved into it while what was seen is
/// made to count more and more (sequential Monte Carlo, Del Moral, Doucet and Jasra 2006), each by steps along the difference of two others (differential evolution Markov chain, ter Braak 2006).
/// </summary>
internal sealed class PoseCloud
{
    /// <summary>Below so many draws that count, in effect, the rest is not to be trusted.</summary>
    public const double Enough = 80;

    private const int Count = 500;
    private const double Start = 250;

    // Moves at each stage, and at the last.
    private const int Moves = 10;
    private const int LastMoves = 30;

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
    private readonly double[][] widths;
    private readonly double[] heights;
    private readonly double[][] values = new double[Count][];
    private readonly double[] believed = new double[Count];
    private readonly double[] seen = new double[Count];
    private readonly SeenPose[] poses = new SeenPose[Count];
    private int draws;

    private PoseCloud(PoseLikelihood likelihood, CameraBelief belief)
    {
        (this.likelihood, this.belief) = (likelihood, belief);
        double[][] spreads = [.. belief.Kinds.Select(belief.Spreads)];
        own = [.. spreads[0].Select(spread => Own * spread)];
        widths = [.. spreads.Select(each => (double[])[.. each.Select(spread => 1 / spread)])];
        heights = [.. spreads.Select((each, kind) => belief.Kinds[kind].Weight / each.Aggregate((a, b) => a * b))];
    }

    /// <summary>Poses of equal weight, and the logarithm of the probability of what was seen.</summary>
    /// <param name="drawn">Draws: logarithm of the weight, logarithm of the probability of what was seen, pose.</param>
    /// <param name="likelihood">What was seen.</param>
    /// <param name="belief">What is believed.</param>
    public static (IReadOnlyList<SeenPose> Poses, double LogEvidence) Of(IReadOnlyList<(double Log, double Seen, SeenPose Pose)> drawn, PoseLikelihood likelihood, CameraBelief belief) =>
        new PoseCloud(likelihood, belief).Run(drawn);

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

    private (IReadOnlyList<SeenPose> Poses, double LogEvidence) Run(IReadOnlyList<(double Log, double Seen, SeenPose Pose)> drawn)
    {
        double[] Logs(double share) => [.. drawn.Select(draw => draw.Log - ((1 - share) * draw.Seen))];
        var share = Largest(0, to => Counting(Logs(to)) >= Start);
        var (picked, evidence) = Picked(Logs(share));
        for (var i = 0; i < Count; i++)
        {
            var (_, log, pose) = drawn[picked[i]];
            (values[i], seen[i], poses[i]) = ([pose.Pose.Right, pose.Pose.Down, pose.Pose.LogFocal, pose.Pose.Bend, pose.Pose.Aspect], log, pose);
            believed[i] = LogBelieved(values[i]);
        }

        while (share < 1)
        {
            for (var move = 0; move < Moves; move++) Move(share);
            var from = share;
            double[] Further(double to) => [.. seen.Select(log => (to - from) * log)];
            share = Largest(from, to => Counting(Further(to)) >= Count / 2.0);
            (picked, var gained) = Picked(Further(share));
            evidence += gained - Elementary.Log(Count);
            Keep(picked);
        }

        for (var move = 0; move < LastMoves; move++) Move(1);
        return ([.. poses.Select(pose => pose with { Weight = 1.0 / Count })], evidence);
    }

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

    // Every one as often as its weight says, evenly spaced; and the logarithm of their sum.
    private static (int[] Picked, double LogSum) Picked(double[] logs)
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

        return (picked, best + Elementary.Log(total));
    }

    private void Keep(int[] picked)
    {
        var (v, b, s, p) = (picked.Select(at => values[at]).ToArray(), picked.Select(at => believed[at]).ToArray(), picked.Select(at => seen[at]).ToArray(), picked.Select(at => poses[at]).ToArray());
        for (var i = 0; i < Count; i++) (values[i], believed[i], seen[i], poses[i]) = (v[i], b[i], s[i], p[i]);
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
            var pose = CameraPose.From(next);
            var focal = Elementary.Exp(pose.LogFocal);
            if (focal < CameraBelief.WidestLens) continue;
            var log = likelihood.Log(pose, focal, out var distance, out var u);
            if (!double.IsFinite(log)) continue;
            var prior = LogBelieved(next);
            if (prior - believed[i] + (share * (log - seen[i])) < Elementary.Log(Math.Max(1e-300, Even(8, i)))) continue;
            (values[i], believed[i], seen[i], poses[i]) = (next, prior, log, new(0, pose, focal, distance, u));
        }
    }

    private double Even(int what, int at) => Scatter.Even(409 + what, draws, at);

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
