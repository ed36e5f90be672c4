using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>What sheets of one place under several lights come to, each evened out first.</summary>
internal static class LightMixing
{
    /// <summary>What is set here, in words for the entry.</summary>
    public const string Settings =
        "brightness against surroundings of 4 % of the width, at most 2.5; relief: spread over the lights; picture: root mean square over the lights of what is finer than 6 px, over 1.6 px, against surroundings of 30 px";

    // Half a stroke of a small mark, px.
    private const double Fine = 0.8;

    // A stroke and the gap beside it.
    private const double Stroke = 6;

    // Wide enough to fill a groove between its two edges.
    private const double Fill = 1.6;

    private const double Surroundings = 30;

    /// <summary>
    /// Whatever stands out finely, in colour or by its slopes, in whichever light, against how much does around it: a faint mark comes out as
    /// bright as a plain one, on an even ground. 8 bits.
    /// </summary>
    public static Mat Contrast(IReadOnlyList<Mat> lights)
    {
        using var squares = new Mat(lights[0].Size(), MatType.CV_32F, Scalar.All(0));
        foreach (var light in lights)
        {
            using var away = new Mat();
            Cv2.GaussianBlur(light, away, default, Stroke);
            Cv2.Subtract(light, away, away);
            using var square = new Mat();
            Cv2.Multiply(away, away, square);
            Cv2.Add(squares, square, squares);
        }

        using var soft = new Mat();
        Cv2.GaussianBlur(squares, soft, default, Fill);
        Cv2.Sqrt(soft, soft);
        using var around = new Mat();
        Cv2.GaussianBlur(soft, around, default, Surroundings);
        using var even = new Mat();
        Cv2.Add(around, Scalar.All(0.01), around);
        Cv2.Divide(soft, around, even);
        return Shown(even);
    }

    /// <summary>What differs from light to light: slopes and edges of grooves, without the colours. 8 bits.</summary>
    public static Mat Relief(IReadOnlyList<Mat> lights)
    {
        using var mean = new Mat(lights[0].Size(), MatType.CV_32F, Scalar.All(0));
        foreach (var light in lights) Cv2.ScaleAdd(light, 1.0 / lights.Count, mean, mean);
        using var squares = new Mat(lights[0].Size(), MatType.CV_32F, Scalar.All(0));
        foreach (var light in lights)
        {
            using var away = new Mat();
            Cv2.Subtract(light, mean, away);
            using var square = new Mat();
            Cv2.Multiply(away, away, square);
            Cv2.Add(squares, square, squares);
        }

        using var soft = new Mat();
        Cv2.GaussianBlur(squares, soft, default, Fine);
        using var spread = new Mat();
        Cv2.Sqrt(soft, spread);
        return Shown(spread);
    }

    /// <summary>From the darkest hundredth to the brightest.</summary>
    private static Mat Shown(Mat sheet)
    {
        using var small = new Mat();
        Cv2.Resize(sheet, small, new(Math.Min(512, sheet.Width), Math.Min(512, sheet.Height)), 0, 0, InterpolationFlags.Nearest);
        small.GetArray(out float[] values);
        Array.Sort(values);
        var (low, high) = (values[values.Length / 100], values[values.Length - 1 - (values.Length / 100)]);
        var times = 255 / Math.Max(1e-6, high - low);
        var shown = new Mat();
        sheet.ConvertTo(shown, MatType.CV_8U, times, -low * times);
        return shown;
    }
}
