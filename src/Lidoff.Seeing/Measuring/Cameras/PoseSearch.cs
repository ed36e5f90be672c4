namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>Finds the poses that fit best under one kind of camera: least squares with the kind's spreads as further residuals, from several starts.</summary>
internal static class PoseSearch
{
    private const int Rounds = 12;

    // Two ends of a search closer than this, in standard deviations of the first, are one.
    private const double SameMode = 0.5;

    // From this spread on slants are those of a look from the side.
    private const double Wide = 0.4;

    private static readonly double[] Steps = [1e-5, 1e-5, 1e-4, 1e-6, 1e-6];

    /// <summary>The best poses with the Cholesky factor of the information there, and the misfit, priors included.</summary>
    /// <param name="likelihood">What was seen.</param>
    /// <param name="centre">Middle of what is believed.</param>
    /// <param name="spreads">Its standard deviations.</param>
    /// <param name="from">Poses to start from instead of the usual ones; empty for those.</param>
    public static List<PoseMode> Modes(PoseLikelihood likelihood, double[] centre, double[] spreads, IReadOnlyList<PoseMode> from)
    {
        var modes = new List<PoseMode>();
        foreach (var start in from.Count > 0 ? from.Select(mode => At(mode.Centre[0], mode.Centre[1], mode.Centre[3], mode.Centre[4])) : Starts(spreads[0]).Select(slant => At(slant.Right, slant.Down, centre[3], centre[4])))
        {
            if (Descend(likelihood, start, centre, spreads) is not { } mode) continue;
            if (!modes.Any(known => known.Apart(mode.Centre) < SameMode)) modes.Add(mode);
        }

        return modes;

        double[] At(double right, double down, double bend, double aspect) => [right, down, centre[2], bend, aspect];
    }

    private static IEnumerable<(double Right, double Down)> Starts(double slant)
    {
        yield return (0, 0);
        if (slant < 0.05) yield break;
        var away = slant < Wide ? 0.15 : 0.6;
        foreach (var (right, down) in new[] { (1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (-1, 1), (1, -1), (-1, -1) }) yield return (away * right, away * down);
    }

    private static PoseMode? Descend(PoseLikelihood likelihood, double[] at, double[] centre, double[] spreads)
    {
        var damping = 1e-3;
        var rest = All(likelihood, at, centre, spreads);
        var misfit = Sum(rest);
        double[,]? factor = null;
        for (var round = 0; round < Rounds; round++)
        {
            var (information, gradient) = Normal(likelihood, at, centre, spreads, rest);
            factor = PositiveMatrix.Factor(information);
            if (factor is null) return null;
            for (var j = 0; j < CameraPose.Count; j++) information[j, j] *= 1 + damping;
            var step = PositiveMatrix.Solve(PositiveMatrix.Factor(information)!, gradient);
            var next = at.Zip(step, (a, b) => a - b).ToArray();
            var nextRest = All(likelihood, next, centre, spreads);
            var nextMisfit = Sum(nextRest);
            if (nextMisfit < misfit)
            {
                var settled = misfit - nextMisfit < 1e-6;
                (at, rest, misfit, damping) = (next, nextRest, nextMisfit, damping / 10);
                if (settled) break;
            }
            else
            {
                damping *= 10;
            }
        }

        return factor is null || !double.IsFinite(misfit) ? null : new(at, factor, misfit);
    }

    private static (double[,] Information, double[] Gradient) Normal(PoseLikelihood likelihood, double[] at, double[] centre, double[] spreads, double[] rest)
    {
        const int n = CameraPose.Count;
        var slopes = new double[n][];
        for (var j = 0; j < n; j++)
        {
            var moved = (double[])at.Clone();
            moved[j] += Steps[j];
            slopes[j] = [.. All(likelihood, moved, centre, spreads).Zip(rest, (a, b) => (a - b) / Steps[j])];
        }

        var (information, gradient) = (new double[n, n], new double[n]);
        for (var j = 0; j < n; j++)
        {
            for (var i = 0; i < rest.Length; i++) gradient[j] += slopes[j][i] * rest[i];
            for (var k = 0; k < n; k++)
            {
                for (var i = 0; i < rest.Length; i++) information[j, k] += slopes[j][i] * slopes[k][i];
            }
        }

        return (information, gradient);
    }

    private static double[] All(PoseLikelihood likelihood, double[] at, double[] centre, double[] spreads) =>
        [.. likelihood.Residuals(CameraPose.From(at)), .. at.Select((value, j) => (value - centre[j]) / spreads[j])];

    private static double Sum(double[] rest)
    {
        var sum = 0.0;
        foreach (var value in rest) sum += value * value;
        return double.IsNaN(sum) ? double.PositiveInfinity : sum;
    }
}
