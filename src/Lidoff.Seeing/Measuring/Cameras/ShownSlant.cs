namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>A slant that known lengths show by disagreeing.</summary>
/// <param name="Ratio">How many times likelier they are under a camera that leans than under one square to the board; lens and pixels may be odd under both.</param>
/// <param name="Degrees">Its mean.</param>
/// <param name="Low">With 95 % it is more, degrees.</param>
/// <param name="High">With 95 % it is less, degrees.</param>
internal sealed record ShownSlant(double Ratio, double Degrees, double Low, double High)
{
    /// <summary>A slant is said from so much: as with standard sizes, ten to one (trade S19).</summary>
    public const double LeastRatio = 10;

    // What is called square: a stand leans by a degree or so.
    private const double Square = 2;

    // Said of anything likelier.
    private const double MostRatio = 1000;

    /// <summary>From the poses that are left, and what was believed before: posterior odds over prior odds.</summary>
    public static double LikelihoodRatio(PoseFit fit, CameraBelief belief)
    {
        var (leans, believed) = (fit.Share(pose => pose.SlantDegrees > Square), belief.Beyond(Square));
        return Math.Min(MostRatio, leans / Math.Max(1e-6, 1 - leans) / (believed / (1 - believed)));
    }

    /// <summary>The slant of poses.</summary>
    public static ShownSlant Of(double ratio, PoseFit fit) =>
        new(ratio, fit.Mean(pose => pose.SlantDegrees), fit.Quantile(pose => pose.SlantDegrees, 0.05), fit.Quantile(pose => pose.SlantDegrees, 0.95));
}
