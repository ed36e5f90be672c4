using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Cameras;

/// <summary>How well a pose explains known lengths, whose one free number besides the pose is the distance to the board.</summary>
internal sealed class PoseLikelihood(SeenReference[] references, PictureSlant? slant)
{
    /// <summary>Impossible: a known length beyond the horizon or above the camera.</summary>
    private const double Never = 1e9;

    private const int MostOnStack = 64;

    /// <summary>Number of residuals.</summary>
    public int Count => references.Sum(reference => 1 + (reference.Target?.Count ?? 0)) + (slant is null ? 0 : PictureSlant.Count);

    /// <summary>Whether a pose can be told from another at all.</summary>
    public bool Tells => references.Length > 1 || slant is not null || HasTarget;

    /// <summary>Whether a target's places tell slant and lens far more closely than lengths do.</summary>
    public bool HasTarget { get; } = references.Any(reference => reference.Target is not null);

    /// <summary>The part of the misfit that targets have by themselves, in squares of standard deviations.</summary>
    public double Expected => references.Sum(reference => reference.Target?.Expected ?? 0);

    /// <summary>What places of which each was known by itself have to tell.</summary>
    public int Degrees => references.Sum(reference => reference.Target?.Degrees ?? 0);

    /// <summary>Distance to the board that fits best, and its standard uncertainty, mm; not a number for an impossible pose.</summary>
    public (double Mm, double U) Distance(CameraPose pose, double focal)
    {
        var (weight, sum) = (0.0, 0.0);
        var perHeight = pose.PerHeight;
        foreach (var reference in references)
        {
            if (reference.Target is { } target)
            {
                var (mm, own, _) = target.Fit(pose, focal, []);
                var whole = 1 / ((own * own) + (mm * mm * reference.RelativeU * reference.RelativeU));
                (weight, sum) = (weight + whole, sum + (whole * (mm + (reference.HeightMm * perHeight))));
                continue;
            }

            var unit = reference.Unit(pose, focal);
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
        var next = references.Length;
        for (var i = 0; i < references.Length; i++)
        {
            var reference = references[i];
            var down = distance - (reference.HeightMm * pose.PerHeight);
            if (reference.Target is { } target)
            {
                var (mm, own, _) = target.Fit(pose, focal, rest.AsSpan(next));
                rest[i] = (down - mm) / Math.Sqrt((own * own) + (mm * mm * reference.RelativeU * reference.RelativeU));
                next += target.Count;
                continue;
            }

            rest[i] = down > 0 ? (reference.LengthMm - (down * reference.Unit(pose, focal))) / reference.UMm : Never;
        }

        slant?.Residuals(pose, focal, rest.AsSpan(next));
        return rest;
    }

    /// <summary>Logarithm of the probability of what was seen, the distance integrated over, up to a shared constant.</summary>
    public double Log(CameraPose pose, double focal, out double distance, out double u)
    {
        if (HasTarget) return LogWithTargets(pose, focal, out distance, out u);
        // The sum of squares about the weighted mean, in one pass over units worked out once.
        Span<double> units = stackalloc double[Math.Min(references.Length, MostOnStack)];
        if (references.Length > MostOnStack) units = new double[references.Length];
        var (weight, sum) = (0.0, 0.0);
        var perHeight = pose.PerHeight;
        for (var i = 0; i < units.Length; i++)
        {
            var reference = references[i];
            units[i] = reference.Unit(pose, focal);
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

    // The pitch, the turn and the place of each target are integrated over as the distance is.
    private double LogWithTargets(CameraPose pose, double focal, out double distance, out double u)
    {
        var (mm, one) = Distance(pose, focal);
        (distance, u) = (mm, one);
        if (!(distance > 0)) return double.NegativeInfinity;
        var (misfit, widths) = (0.0, 0.0);
        foreach (var reference in references)
        {
            var down = distance - (reference.HeightMm * pose.PerHeight);
            if (down <= 0) return double.NegativeInfinity;
            if (reference.Target is not { } target)
            {
                var off = (reference.LengthMm - (down * reference.Unit(pose, focal))) / reference.UMm;
                misfit += off * off;
                continue;
            }

            var (at, own, left) = target.Fit(pose, focal, []);
            var wide = Math.Sqrt((own * own) + (at * at * reference.RelativeU * reference.RelativeU));
            misfit += left + ((down - at) * (down - at) / (wide * wide));
            widths += Elementary.Log(own * own / (at * wide));
        }

        if (slant is not null)
        {
            Span<double> rests = stackalloc double[PictureSlant.Count];
            slant.Residuals(pose, focal, rests);
            foreach (var rest in rests) misfit += rest * rest;
        }

        return (-0.5 * misfit) + widths + Elementary.Log(u / distance);
    }
}
