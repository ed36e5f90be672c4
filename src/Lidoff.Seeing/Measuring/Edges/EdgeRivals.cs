using Lidoff.Numbers;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// All steps that run parallel to a fitted edge: rim, bevel, shadow and pads beside a body's outline. They are read off the mean of all profiles
/// along it, where steps show that single profiles hide in their grain.
/// </summary>
internal static class EdgeRivals
{
    // Width of the derivative, px: narrower than the search's, for steps close together.
    private const double Smooth = 0.7;

    // Of 255. A mean of dozens of pixels shows steps of a few.
    private const double LeastStep = 4;
    private const double AboveNoise = 4;

    // Less than this of the strongest step is a ground's grain beside it.
    private const double Comparable = 0.06;

    // Sharpening in cameras draws a seam beside a strong step, up to about this share of it, that is no edge (from memory).
    private const double Seam = 0.12;
    private const double SeamPx = 3;

    /// <summary>The steps, by how far across they lie from the line, px, and how high they are, of 255.</summary>
    public static List<(double Off, double Height)> Of(PixelField field, EdgeTrack track, EdgeLine line, double piece, double half)
    {
        var band = EdgeBand.Of(field, track, half, piece, line.Coefficients);
        if (band.Profiles.Length == 0) return [];
        var mean = new double[band.Profiles[0].Length];
        foreach (var profile in band.Profiles) for (var i = 0; i < mean.Length; i++) mean[i] += profile[i] / band.Profiles.Length;
        var side = (int)Math.Ceiling(3 * Smooth / EdgeBand.Step);
        var slopes = new double[mean.Length];
        for (var i = side; i < mean.Length - side; i++) for (var k = -side; k <= side; k++) slopes[i] += Kernel(k) * mean[i + k];
        var toStep = Math.Sqrt(2 * Math.PI * ((Smooth * Smooth) + (line.BlurPx * line.BlurPx)));
        var floor = Math.Max(LeastStep, AboveNoise * band.Noise / Math.Sqrt(band.Profiles.Length));
        var steps = new List<(double Off, double Height)>();
        for (var i = side + 1; i < mean.Length - side - 1; i++)
        {
            var (before, here, after) = (Math.Abs(slopes[i - 1]), Math.Abs(slopes[i]), Math.Abs(slopes[i + 1]));
            if (here < before || here <= after || here * toStep < floor) continue;
            var bend = before - (2 * here) + after;
            steps.Add((((i + (bend < 0 ? 0.5 * (before - after) / bend : 0)) * EdgeBand.Step) - band.Half, here * toStep));
        }

        var least = steps.Count == 0 ? 0 : Comparable * steps.Max(step => step.Height);
        return [.. steps.Where(step => step.Height >= least)];
    }

    /// <summary>True where the one may be the seam of the other.</summary>
    public static bool IsSeam((double Off, double Height) step, (double Off, double Height) other) => Math.Abs(other.Off - step.Off) < SeamPx && step.Height < Seam * other.Height;

    // Derivative of a Gaussian, for values half a pixel apart.
    private static double Kernel(int k)
    {
        var x = k * EdgeBand.Step / Smooth;
        return x * Elementary.Exp(-x * x / 2) / (Math.Sqrt(2 * Math.PI) * Smooth * Smooth) * EdgeBand.Step;
    }
}
