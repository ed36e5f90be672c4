using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Tests.Composing;

/// <summary>A wide blur made on a reduced sheet must spread a point as far as a normal distribution of its width does, and lose nothing of it.</summary>
public sealed class WideBlursTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(8)]
    [InlineData(15)]
    [InlineData(30)]
    public void A_point_is_spread_by_the_standard_deviation_asked_for(double scale)
    {
        Assert.Null(VisionLibrary.OfThisMachine.Trouble);
        const int side = 401;
        using var sheet = new Mat(side, side, MatType.CV_32F, Scalar.All(0));
        sheet.Set(200, 200, 1000f);
        using var blurred = WideBlurs.Of(sheet, scale);
        blurred.GetArray(out float[] values);
        var (sum, across, down) = (0.0, 0.0, 0.0);
        for (var i = 0; i < values.Length; i++)
        {
            var (x, y) = ((i % side) - 200, (i / side) - 200);
            (sum, across, down) = (sum + values[i], across + ((double)values[i] * x * x), down + ((double)values[i] * y * y));
        }

        Assert.Equal(1000, sum, 1.0);
        // Second moments are variances; the kernel ends at three or four of them, and the reduced sheet's pixels are a quarter of one wide.
        Assert.InRange(Math.Sqrt(across / sum) / scale, 0.96, 1.06);
        Assert.InRange(Math.Sqrt(down / sum) / scale, 0.96, 1.06);
    }
}
