using Lidoff.Evidence.Working;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// The slice each place is sharpest in, to a fraction of a slice: the top of a parabola through the sharpest and its neighbours,
/// smoothed by how surely it is known, so that bare places take their height from what stands around them.
/// </summary>
internal sealed class SliceDepth(IReadOnlyList<SourcePicture> slices, IReadOnlyList<Similarity> maps, IJobReport report)
{
    // Sharpness is looked at over this much around a place, px (standard deviation); about two strokes of a mark.
    private const double Window = 3;

    // How far edges that are not there reach in from an uncovered border, px.
    private const int Border = 8;

    // A place that is hardly sharper in its best slice than in its worst knows nothing of its height.
    private const double LeastGain = 1.6;

    /// <summary>What is set here, in words for the entry.</summary>
    public const string Settings = "squared Laplacian over 3 px, parabola of its logarithm, smoothed by certainty over 2, 8, 32 and 128 px";

    private static readonly double[] Scales = [2, 8, 32, 128];

    /// <summary>Index of the sharpest slice from 0 (32-bit), and the share of places that know it by themselves.</summary>
    public (Mat Index, double Textured) Find()
    {
        var size = new Size(slices[0].Header.Width, slices[0].Header.Height);
        using var best = new Mat(size, MatType.CV_32F, Scalar.All(-1));
        using var least = new Mat(size, MatType.CV_32F, Scalar.All(float.MaxValue));
        using var before = new Mat(size, MatType.CV_32F, Scalar.All(0));
        using var after = new Mat(size, MatType.CV_32F, Scalar.All(0));
        using var at = new Mat(size, MatType.CV_32F, Scalar.All(0));
        using var last = new Mat();
        using var won = new Mat(size, MatType.CV_8U, Scalar.All(0));
        for (var k = 0; k < slices.Count; k++)
        {
            report.Stop.ThrowIfCancellationRequested();
            report.Say((slices.Count * 2) + k, slices.Count * 4, ComposingSentences.Sharpness(slices[k].Name));
            using var sharp = Sharp(k, size);
            // What won last time has this slice after it.
            sharp.CopyTo(after, won);
            Cv2.Min(least, sharp, least);
            Cv2.Compare(sharp, best, won, CmpTypes.GT);
            sharp.CopyTo(best, won);
            at.SetTo(Scalar.All(k), won);
            if (k > 0) last.CopyTo(before, won);
            sharp.CopyTo(last);
        }

        // At both ends there is no neighbour to lean on.
        return Settle(best, least, before, after, at);
    }

    private Mat Sharp(int k, Size size)
    {
        using var colour = Sheets.Colour(slices[k]);
        using var grey = new Mat();
        Cv2.CvtColor(colour, grey, ColorConversionCodes.RGB2GRAY);
        using var laid = k == 0 ? grey.Clone() : Warps.Warp(grey, maps[k], size, InterpolationFlags.Cubic, BorderTypes.Replicate);
        using var smooth = new Mat();
        using var edges = new Mat();
        // One more pixel of smoothing makes slices that were warped and one that was not equal in their noise.
        Cv2.GaussianBlur(laid, smooth, default, 1);
        Cv2.Laplacian(smooth, edges, MatType.CV_32F, 3);
        using var energy = new Mat();
        Cv2.Multiply(edges, edges, energy);
        var sharp = new Mat();
        Cv2.GaussianBlur(energy, sharp, default, Window);
        if (k > 0) Uncover(sharp, maps[k]);
        return sharp;
    }

    /// <summary>Along the border, where a slice of a larger scale shows less than the first one, it is sharp nowhere.</summary>
    private static void Uncover(Mat sharp, Similarity map)
    {
        using var whole = new Mat(sharp.Size(), MatType.CV_8U, Scalar.All(255));
        using var covered = Warps.Warp(whole, map, sharp.Size(), InterpolationFlags.Nearest);
        using var frame = new Mat();
        Cv2.CopyMakeBorder(covered, frame, Border, Border, Border, Border, BorderTypes.Replicate);
        using var kernel = Cv2.GetStructuringElement(MorphShapes.Rect, new((2 * Border) + 1, (2 * Border) + 1));
        Cv2.Erode(frame, frame, kernel);
        using var bare = new Mat();
        using var inner = frame[new Rect(Border, Border, sharp.Width, sharp.Height)];
        Cv2.Compare(inner, 255, bare, CmpTypes.LT);
        sharp.SetTo(Scalar.All(0), bare);
    }

    private (Mat Index, double Textured) Settle(Mat best, Mat least, Mat before, Mat after, Mat at)
    {
        var n = slices.Count;
        var floor = Floor(least);
        var sure = new Mat(best.Size(), MatType.CV_32F);
        long textured = 0;
        var rows = best.Rows;
        for (var y = 0; y < rows; y++)
        {
            var b = best.RowSpan<float>(y);
            var l = least.RowSpan<float>(y);
            var p = before.RowSpan<float>(y);
            var q = after.RowSpan<float>(y);
            var i = at.RowSpan<float>(y);
            var s = sure.RowSpan<float>(y);
            for (var x = 0; x < b.Length; x++)
            {
                var gain = b[x] - (float)(LeastGain * l[x]) - floor;
                s[x] = gain > 0 ? gain : 0;
                if (gain > 0) textured++;
                var k = (int)i[x];
                if (gain <= 0 || k == 0 || k == n - 1) continue;
                i[x] += (float)Blocks.Between(Log(p[x] + floor), Log(b[x] + floor), Log(q[x] + floor));
            }
        }

        using var certain = sure;
        return (Smoothed(at, certain), (double)textured / ((long)rows * best.Cols));
    }

    private static double Log(double value) => Numbers.Elementary.Log(Math.Max(value, 1e-6));

    /// <summary>Noise of a place that is in no slice sharp: the lower fifth of the least sharpness, doubled.</summary>
    private static float Floor(Mat least)
    {
        using var small = new Mat();
        Cv2.Resize(least, small, new(Math.Min(256, least.Width), Math.Min(256, least.Height)), 0, 0, InterpolationFlags.Nearest);
        small.GetArray(out float[] values);
        Array.Sort(values);
        return Math.Max(0.5f, 2 * values[values.Length / 5]);
    }

    /// <summary>Means weighted by certainty, fine where that is enough of it, coarser where not.</summary>
    private static Mat Smoothed(Mat at, Mat sure)
    {
        // The square root keeps one glaring edge from drowning a chip's mark beside it.
        using var weight = new Mat();
        Cv2.Sqrt(sure, weight);
        using var weighted = new Mat();
        Cv2.Multiply(at, weight, weighted);
        using var sum = new Mat(at.Size(), MatType.CV_32F, Scalar.All(0));
        using var all = new Mat(at.Size(), MatType.CV_32F, Scalar.All(1e-9));
        var share = 1.0;
        foreach (var scale in Scales)
        {
            using var w = WideBlurs.Of(weight, scale);
            using var v = WideBlurs.Of(weighted, scale);
            Cv2.ScaleAdd(v, share, sum, sum);
            Cv2.ScaleAdd(w, share, all, all);
            share *= 0.02;
        }

        var index = new Mat();
        Cv2.Divide(sum, all, index);
        return index;
    }
}
