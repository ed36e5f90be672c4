using OpenCvSharp;

namespace Lidoff.Seeing.Vision;

/// <summary>Normal blurs of any width, on a reduced sheet where they are wide: a wide one costs no more than a narrow one.</summary>
internal static class WideBlurs
{
    // A blur of three or four px is as good as its kernel; below it the reduced sheet's own pixels would show.
    private const int LeastSmall = 4;

    /// <summary>The blurred sheet, 32 bits; <paramref name="scale"/> is the standard deviation, px.</summary>
    public static Mat Of(Mat sheet, double scale)
    {
        var blurred = new Mat();
        var by = Math.Max(1, (int)(scale / LeastSmall));
        if (by == 1)
        {
            Cv2.GaussianBlur(sheet, blurred, default, scale);
            return blurred;
        }

        using var soft = Reduced(sheet, scale, by);
        Cv2.Resize(soft, blurred, sheet.Size(), 0, 0, InterpolationFlags.Linear);
        return blurred;
    }

    /// <summary>The same, left reduced <paramref name="by"/> so much.</summary>
    public static Mat Reduced(Mat sheet, double scale, int by)
    {
        var small = new Mat();
        // Two px at least, so that there is something to go between.
        Cv2.Resize(sheet, small, new(Math.Max(2, sheet.Width / by), Math.Max(2, sheet.Height / by)), 0, 0, InterpolationFlags.Area);
        small.ConvertTo(small, MatType.CV_32F);
        Cv2.GaussianBlur(small, small, default, scale / by, borderType: BorderTypes.Replicate);
        return small;
    }
}
