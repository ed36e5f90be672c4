using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>How well a pose explains known lengths, whose one free number besides the pose is the distance to the board.</summary>
internal sealed class PoseLikelihood(SeenReference[] references, PictureSlant? slant)
{
    /// <summary>Impossible: a known length beyond the horizon or above the camera.</summary>
    private const double Never = 1e9;

    private const int MostOnStack = 64;

    /// <summary>Number of residuals.</summary>
    public int Count => references.Length + (slant is null ? 0 : PictureSlant.Count);

    /// <summary>Whether a pose can be told from another at all.</summary>
    public bool Tells => references.Length > 1 || slant is not null;

    /// <summary>Distance to the board that fits best, and its standard uncertainty, mm; not a number for an impossible pose.</summary>
    public (double Mm, double U) Distance(CameraPose pose, double focal)
    {
        var (weight, sum) = (0.0, 0.0);
        var perHeight = pose.PerHeight;
        foreach (var reference in references)
        {
            var unit = pose.Unit(reference.Chord, focal);
            var w = unit * unit / (reference.UMm * reference.UMm);
            weight += w;
            sum += w * ((reference.LengthMm / unit) + (reference.HeightMm * perHeight));
        }

        return (sum / weight, 1 / Math.Sqrt(weight));
    }

    /// <summary>Residuals in standard deviations.</summary>
    public double[] Residuals(CameraPose pose)
    {
        var focal = Elementary.Exp(pose.LogFocal);
        var (distance, _) = Distance(pose, focal);
        var rest = new double[Count];
        for (var i = 0; i < references.Length; i++)
        {
            var reference = references[i];
            var down = distance - (reference.HeightMm * pose.PerHeight);
            rest[i] = down > 0 ? (reference.LengthMm - (down * pose.Unit(reference.Chord, focal))) / reference.UMm : Never;
        }

        slant?.Residuals(pose, focal, rest.AsSpan(references.Length));
        return rest;
    }

    /// <summary>Logarithm of the probability of what was seen, the distance integrated over, up to a shared constant.</summary>
    public double Log(CameraPose pose, double focal, out double distance, out double u)
    {
        // The sum of squares about the weighted mean, in one pass over units worked out once.
        Span<double> units = stackalloc double[Math.Min(references.Length, MostOnStack)];
        if (references.Length > MostOnStack) units = new double[references.Length];
        var (weight, sum) = (0.0, 0.0);
        var perHeight = pose.PerHeight;
        for (var i = 0; i < units.Length; i++)
        {
            var reference = references[i];
            units[i] = pose.Unit(reference.Chord, focal);
            var w = units[i] / reference.UMm;
            weight += w * w;
            sum += w / reference.UMm * (reference.LengthMm + (reference.HeightMm * perHeight * units[i]));
        }

        (distance, u) = (sum / weight, 1 / Math.Sqrt(weight));
        if (!(distance > 0)) return double.NegativeInfinity;
        var misfit = 0.0;
        for (var i = 0; i < units.Length; i++)
        {
            var reference = references[i];
            var down = distance - (reference.HeightMm * perHeight);
            if (down <= 0) return double.NegativeInfinity;
            var rest = (reference.LengthMm - (down * units[i])) / reference.UMm;
            misfit += rest * rest;
        }

        if (slant is not null)
        {
            Span<double> rests = stackalloc double[PictureSlant.Count];
            slant.Residuals(pose, focal, rests);
            foreach (var rest in rests) misfit += rest * rest;
        }

        return (-0.5 * misfit) + Elementary.Log(u / distance);
    }
}
