using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Edges;
using NetVips;

namespace Lidoff.Seeing.Tests.Measuring.Edges;

/// <summary>
/// Pictures with edges at known places, as ISO 12233 takes a slanted one: every pixel is the light of a blurred step, with a share of an edge
/// by Abramowitz and Stegun's normal distribution; then the tone curve, grain, rounding and, where asked for, JPEG.
/// </summary>
internal static class DrawnEdges
{
    /// <summary>Draws light (0 to 255) by a function of the pixel's middle. <paramref name="curve"/> is the exponent between light and file: 1 for none.</summary>
    public static PixelField Draw(int width, int height, Func<double, double, double> light, Random random, double curve = 1, double grain = 0, int quality = 0)
    {
        var values = new float[width * height];
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                var value = 255 * Math.Pow(light(x + 0.5, y + 0.5) / 255, 1 / curve);
                values[(y * width) + x] = (float)Math.Clamp(Math.Round(value + (grain * BenchScene.Normal(random))), 0, 255);
            }
        }

        if (quality == 0) return PixelField.Of(values, width, height);
        using var image = Image.NewFromMemory(Array.ConvertAll(values, value => (byte)value), width, height, 1, Enums.BandFormat.Uchar);
        using var read = Image.JpegloadBuffer(image.JpegsaveBuffer(q: quality));
        return PixelField.Of(Array.ConvertAll(read.WriteToMemory<byte>(), value => (float)value), width, height);
    }

    /// <summary>A value of the file as light under a curve.</summary>
    public static double Light(double value, double curve) => 255 * Math.Pow(value / 255, curve);

    /// <summary>Abramowitz and Stegun 26.2.17: the normal distribution to 7.5e-8.</summary>
    public static double Share(double z)
    {
        if (z < 0) return 1 - Share(-z);
        var t = 1 / (1 + (0.2316419 * z));
        return 1 - (Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI) * t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429)))))))));
    }

    /// <summary>How far a place lies to the right of a line through a point, at an angle to the vertical.</summary>
    public static double Beyond(double x, double y, PicturePoint on, double degrees) =>
        ((x - on.X) * Math.Cos(degrees * Math.PI / 180)) + ((y - on.Y) * Math.Sin(degrees * Math.PI / 180));
}
