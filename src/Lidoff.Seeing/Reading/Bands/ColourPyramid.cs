using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Bands;

/// <summary>A part of a picture in colour, in linear light, sampled as its brightness is.</summary>
public sealed class ColourPyramid
{
    private readonly GreyPyramid[] channels;

    /// <summary>Takes over bytes of sRGB, three a pixel, or one a pixel of a grey picture.</summary>
    /// <param name="bytes">Row after row.</param>
    /// <param name="bands">1 or 3.</param>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="left">Where its left rim lies in the picture, px.</param>
    /// <param name="top">Where its upper rim lies in the picture, px.</param>
    /// <param name="step">How many px of the picture one of its pixels is.</param>
    public ColourPyramid(byte[] bytes, int bands, int width, int height, double left = 0, double top = 0, double step = 1)
    {
        Guard.That(bands is 1 or 3 && Guard.NotNull(bytes).Length == width * height * bands, "one or three bytes a pixel");
        IsGrey = bands == 1;
        channels = [.. Enumerable.Range(0, 3).Select(channel =>
        {
            var values = new float[width * height];
            for (var i = 0; i < values.Length; i++) values[i] = LinearRgb.OfStep(bytes[(i * bands) + Math.Min(channel, bands - 1)]);
            return new GreyPyramid(values, width, height, left, top, step);
        })];
    }

    /// <summary>True of a picture without colour.</summary>
    public bool IsGrey { get; }

    /// <summary>Samples a rectangle of the picture, row after row along it.</summary>
    public LinearRgb[] Sample(PictureRegion region, int columns, int rows)
    {
        var (along, down) = (region.Along, region.Down);
        var (right, below) = ((along.X * region.Width / columns, along.Y * region.Width / columns), (down.X * region.Height / rows, down.Y * region.Height / rows));
        var (r, g, b) = (channels[0].Sample(region.At(-0.5, -0.5), right, below, columns, rows), channels[1].Sample(region.At(-0.5, -0.5), right, below, columns, rows), channels[2].Sample(region.At(-0.5, -0.5), right, below, columns, rows));
        return [.. r.Select((red, i) => new LinearRgb(red, g[i], b[i]))];
    }
}
