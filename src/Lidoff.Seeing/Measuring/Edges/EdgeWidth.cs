using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>
/// How wide the edge is that an end of a length was clicked on. A sharp edge takes two or three pixels; a rounded body, a meniscus or a
/// picture out of focus takes more, and where in it the end lies is then open by its width, whoever clicks.
/// </summary>
internal static class EdgeWidth
{
    // What a sharp edge takes after the lens and the sensor, px of the looked-at picture.
    private const double Sharp = 2.5;

    private const double MostWidth = 12;
    private const float LeastContrast = 15;
    private const int Reach = 12;
    private const int Beside = 3;

    /// <summary>Standard uncertainty that the edge's width adds to an end, px of the upright picture; 0 where the edge is sharp or none is there.</summary>
    /// <param name="grey">The picture.</param>
    /// <param name="end">The end.</param>
    /// <param name="other">The other end, at another place: it gives the direction.</param>
    /// <param name="clickPx">Standard uncertainty of the click, px: the edge lies within three of them.</param>
    public static double Doubt(GreyPicture grey, PicturePoint end, PicturePoint other, double clickPx) =>
        Doubt((x, y) => Between(grey, x, y), grey.PxPerPx, end, other, clickPx);

    /// <summary>The same in a field of pixels at full resolution.</summary>
    public static double Doubt(PixelField field, PicturePoint end, PicturePoint other, double clickPx) => Doubt(field.At, 1, end, other, clickPx);

    private static double Doubt(Func<double, double, float> at, double pxPerPx, PicturePoint end, PicturePoint other, double clickPx)
    {
        var length = end.DistanceTo(other);
        var (dx, dy) = ((other.X - end.X) / length, (other.Y - end.Y) / length);
        var (x, y) = (end.X / pxPerPx, end.Y / pxPerPx);
        Span<float> profile = stackalloc float[(2 * Reach) + 1];
        for (var i = -Reach; i <= Reach; i++)
        {
            for (var j = -Beside; j <= Beside; j++) profile[i + Reach] += at(x + (i * dx) - (j * dy), y + (i * dy) + (j * dx)) / ((2 * Beside) + 1);
        }

        var window = Math.Min(Reach - 2, (int)Math.Ceiling(3 * clickPx / pxPerPx) + 1);
        var (steepest, middle) = (0f, 0);
        for (var i = Reach - window; i <= Reach + window; i++)
        {
            var slope = Math.Abs(profile[i + 1] - profile[i - 1]) / 2;
            if (slope > steepest) (steepest, middle) = (slope, i);
        }

        if (steepest <= 0) return 0;
        // The edge goes on both ways as long as brightness goes the same way.
        var sign = Math.Sign(profile[middle + 1] - profile[middle - 1]);
        var (low, high) = (middle, middle);
        while (low > 0 && sign * (profile[low] - profile[low - 1]) > 0.1 * steepest) low--;
        while (high < profile.Length - 1 && sign * (profile[high + 1] - profile[high]) > 0.1 * steepest) high++;
        var step = Math.Abs(profile[high] - profile[low]);
        if (step < LeastContrast) return 0;
        var width = Math.Min(MostWidth, step / steepest);
        // Evenly likely over what is more than a sharp edge's width (GUM 4.3.7).
        return Math.Max(0, width - Sharp) * pxPerPx / Math.Sqrt(12);
    }

    private static float Between(GreyPicture grey, double x, double y)
    {
        var (px, py) = (Math.Clamp(x - 0.5, 0, grey.Width - 1.001), Math.Clamp(y - 0.5, 0, grey.Height - 1.001));
        var (ix, iy) = ((int)px, (int)py);
        var (fx, fy) = ((float)(px - ix), (float)(py - iy));
        return (grey.At(ix, iy) * (1 - fx) * (1 - fy)) + (grey.At(ix + 1, iy) * fx * (1 - fy)) + (grey.At(ix, iy + 1) * (1 - fx) * fy) + (grey.At(ix + 1, iy + 1) * fx * fy);
    }
}
