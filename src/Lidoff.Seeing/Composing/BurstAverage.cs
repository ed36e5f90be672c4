using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// The mean of the same picture taken many times. Frames during which camera or specimen moved are left out, not bent into place: a
/// mean must not lose sharpness to save a frame. Holds two sums and one frame in memory, whatever their number.
/// </summary>
internal static class BurstAverage
{
    // A mean of places a third of a pixel apart loses no sharpness that one could see.
    private const double MostShift = 0.35;

    // Places that moved more than this apart from one another: something in the picture moved, not the camera.
    private const double MostApart = 1;

    private const long MostPixels = 40_000_000;

    public static Outcome<Composition> Make(ComposeOrder order, IJobReport report)
    {
        var pictures = order.Pictures;
        SameSize.Check(pictures, MostPixels);
        var shifts = Shifts(pictures, report);
        var kept = Largest(shifts);
        if (kept.Count < 2) return new Fault("pictures", "frames of a camera that stood still", ComposingSentences.AllMoved());
        var (mean, single, averaged) = Mean(pictures, kept, report);
        using var result = mean;
        var left = Enumerable.Range(0, pictures.Count).Except(kept).ToList();
        return new Composition
        {
            Picture = Sheets.Png(result),
            Inputs = [.. kept.Select(i => pictures[i].Sha256)],
            LeftOut = [.. left.Select(i => pictures[i].Sha256)],
            Settings = ComposingSentences.AverageSettings(MostShift),
            Program = VisionLibrary.Versions(),
            FirstAt = (0, 0),
            Says = [ComposingSentences.Averaged(kept.Count, single, averaged), .. left.Select(i => Why(pictures[i].Name, shifts[i], shifts[kept[0]]!.Value))],
        };
    }

    private static string Why(string name, FrameShift? shift, FrameShift kept) =>
        shift is not { } by ? ComposingSentences.FrameOther(name) : by.Apart > MostApart ? ComposingSentences.FrameBlurred(name) : ComposingSentences.FrameMoved(name, by.From(kept));

    private static List<FrameShift?> Shifts(ValueList<SourcePicture> pictures, IJobReport report)
    {
        using var first = Sheets.Grey(pictures[0], MostPixels).Grey;
        var places = FrameShift.Places(first);
        if (places.Count < 3) throw new RefusedException(new Fault(pictures[0].Name, "a picture with something to hold on to", ComposingSentences.Featureless(pictures[0].Name)));
        List<FrameShift?> shifts = [new FrameShift(0, 0, 0)];
        foreach (var picture in pictures.Skip(1))
        {
            report.Stop.ThrowIfCancellationRequested();
            report.Say(shifts.Count, pictures.Count * 2, ComposingSentences.Comparing(picture.Name));
            using var frame = Sheets.Grey(picture, MostPixels).Grey;
            shifts.Add(FrameShift.Of(first, frame, places));
        }

        return shifts;
    }

    /// <summary>The largest group of frames that lie on one another; of equal ones the one that begins first.</summary>
    private static List<int> Largest(List<FrameShift?> shifts)
    {
        List<int> best = [];
        for (var i = 0; i < shifts.Count; i++)
        {
            if (shifts[i] is not { Apart: <= MostApart } middle) continue;
            var near = Enumerable.Range(0, shifts.Count).Where(j => shifts[j] is { Apart: <= MostApart } other && other.From(middle) <= MostShift).ToList();
            if (near.Count > best.Count) best = near;
        }

        return best;
    }

    private static (Mat Mean, double Single, double Averaged) Mean(ValueList<SourcePicture> pictures, List<int> kept, IJobReport report)
    {
        // Two halves, each a sum of its own: what they differ by is the noise that is left, measured and not promised.
        using var even = new Mat();
        using var odd = new Mat();
        Mat? before = null;
        double single = 0;
        for (var i = 0; i < kept.Count; i++)
        {
            report.Stop.ThrowIfCancellationRequested();
            report.Say(pictures.Count + i, pictures.Count + kept.Count, ComposingSentences.Adding(pictures[kept[i]].Name));
            var frame = Sheets.Colour(pictures[kept[i]]);
            if (i == 1) single = Noise(before!, frame) / Math.Sqrt(2);
            before?.Dispose();
            before = frame;
            var sum = i % 2 == 0 ? even : odd;
            if (sum.Empty()) frame.ConvertTo(sum, MatType.CV_32F);
            else Cv2.Add(sum, frame, sum, dtype: MatType.CV_32F);
        }

        before?.Dispose();
        var (evens, odds) = ((kept.Count + 1) / 2, kept.Count / 2);
        using var a = (even * (1.0 / evens)).ToMat();
        using var b = (odd * (1.0 / odds)).ToMat();
        // var(a − b) = σ²(1/evens + 1/odds); the mean of all has σ²/n.
        var left = Noise(a, b) / Math.Sqrt(kept.Count * ((1.0 / evens) + (1.0 / odds)));
        Cv2.Add(even, odd, even);
        var mean = new Mat();
        even.ConvertTo(mean, MatType.CV_8U, 1.0 / kept.Count);
        return (mean, single, left);
    }

    /// <summary>Standard deviation of what two sheets differ by, steps of 255, each channel for itself so that a lamp that grew warmer does not count.</summary>
    private static double Noise(Mat a, Mat b)
    {
        using var difference = new Mat();
        Cv2.Subtract(a, b, difference, dtype: MatType.CV_32F);
        Cv2.MeanStdDev(difference, out _, out var spread);
        return (spread.Val0 + spread.Val1 + spread.Val2) / 3;
    }
}
