using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>Profiles of a band under one tone curve, with the blur of their steps.</summary>
internal sealed class Reading
{
    // The step is looked for this far from the middle of its profile, px.
    private const double Reach = 2.5;

    // Blurs of lenses and sensors, px.
    private const double Growth = 1.25;
    private static readonly double[] Blurs = [.. Enumerable.Range(0, 10).Select(i => 0.4 * Elementary.Pow(Growth, i))];

    // So many profiles tell the blur of all.
    private const int Asked = 15;

    private readonly float[][] profiles;
    private readonly EdgeBand band;
    private readonly double inner;
    private readonly double outer;

    private Reading(float[][] profiles, EdgeBand band, double inner, double outer, double blur)
    {
        (this.profiles, this.band, this.inner, this.outer) = (profiles, band, inner, outer);
        Blur = blur;
    }

    /// <summary>The blur that most profiles are fitted best with, px.</summary>
    public double Blur { get; }

    /// <summary>Reads profiles; null where none has a step.</summary>
    /// <param name="profiles">Values under the curve.</param>
    /// <param name="band">Their band.</param>
    /// <param name="inner">Next edge on the inner side, px across from the middle, or minus infinity.</param>
    /// <param name="outer">The same on the outer side.</param>
    public static Reading? Of(float[][] profiles, EdgeBand band, double inner, double outer)
    {
        var best = new List<double>();
        var every = Math.Max(1, profiles.Length / Asked);
        for (var i = every / 2; i < profiles.Length; i += every)
        {
            var misfits = Blurs.Select(blur => StepFit.To(profiles[i], -band.Half, EdgeBand.Step, Math.Max(-4, 0.6 * inner), Math.Min(4, 0.6 * outer), blur, Reach)?.Misfit ?? double.PositiveInfinity).Select(each => each * each).ToArray();
            var at = Enumerable.Range(0, Blurs.Length).MinBy(k => misfits[k]);
            if (!double.IsFinite(misfits[at])) continue;
            var part = at == 0 || at == Blurs.Length - 1 ? 0 : 0.5 * (misfits[at - 1] - misfits[at + 1]) / (misfits[at - 1] - (2 * misfits[at]) + misfits[at + 1]);
            best.Add(Blurs[at] * (double.IsFinite(part) ? Elementary.Pow(Growth, part) : 1));
        }

        return best.Count == 0 ? null : new(profiles, band, inner, outer, EdgeLineFit.Median(best));
    }

    /// <summary>The step of one profile, or null.</summary>
    /// <param name="i">Which.</param>
    /// <param name="share">How much of the usual window counts.</param>
    public (double Place, double Step, double Misfit)? Fit(int i, double share)
    {
        var (low, high) = Window(share);
        return StepFit.To(profiles[i], -band.Half, EdgeBand.Step, low, high, Blur, Reach);
    }

    // Both levels must show; what belongs to the next edge must not.
    private (double Low, double High) Window(double share)
    {
        var half = share * Math.Clamp((2.5 * Blur) + 1, 3, 6);
        return (Math.Max(-half, Math.Min(-1.2, 0.6 * inner)), Math.Min(half, Math.Max(1.2, 0.6 * outer)));
    }
}
