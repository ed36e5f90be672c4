using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Seeing.Measuring.Words;

/// <summary>Patches of a picture that stand out from their surroundings, brighter or darker, of the size of letters.</summary>
internal static class InkPatches
{
    // Half the window of the surroundings, px.
    private const int Around = 24;

    private const int LeastPixels = 18;
    private const int MostPixels = 4000;

    /// <summary>Connected patches that stand out by <paramref name="contrast"/> from the mean of what surrounds them, bright ones or dark ones.</summary>
    public static List<List<int>> Find(GreyPicture grey, bool bright, float contrast)
    {
        var (width, height) = (grey.Width, grey.Height);
        var sums = Sums(grey);
        var ink = new bool[width * height];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var (x1, y1, x2, y2) = (Math.Max(0, x - Around), Math.Max(0, y - Around), Math.Min(width, x + Around + 1), Math.Min(height, y + Around + 1));
                var sum = sums[(y2 * (width + 1)) + x2] - sums[(y1 * (width + 1)) + x2] - sums[(y2 * (width + 1)) + x1] + sums[(y1 * (width + 1)) + x1];
                var over = grey.At(x, y) - (float)(sum / ((x2 - x1) * (y2 - y1)));
                ink[(y * width) + x] = bright ? over > contrast : over < -contrast;
            }
        }

        return [.. ConnectedPatches.Of(ink, width).Where(patch => patch.Count is >= LeastPixels and <= MostPixels)];
    }

    private static double[] Sums(GreyPicture grey)
    {
        var (width, height) = (grey.Width, grey.Height);
        var sums = new double[(width + 1) * (height + 1)];
        for (var y = 0; y < height; y++)
        {
            var row = 0.0;
            for (var x = 0; x < width; x++)
            {
                row += grey.At(x, y);
                sums[((y + 1) * (width + 1)) + x + 1] = sums[(y * (width + 1)) + x + 1] + row;
            }
        }

        return sums;
    }
}
