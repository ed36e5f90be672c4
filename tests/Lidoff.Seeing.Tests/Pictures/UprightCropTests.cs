using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.TestSupport;

namespace Lidoff.Seeing.Tests.Pictures;

/// <summary>A picture of four fields, whose corners are known by hand whichever way it is turned.</summary>
public sealed class UprightCropTests : IDisposable
{
    // Left top, right top, left foot, right foot, as they lie in a picture of 80 × 40 px.
    private static readonly byte[] Fields = [20, 90, 160, 230];

    private readonly TempFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData(0, 80, 40, new[] { 20, 90, 160, 230 })]
    // Text that runs down the picture stands upright when the picture is turned back by a quarter.
    [InlineData(90, 40, 80, new[] { 90, 230, 20, 160 })]
    [InlineData(180, 80, 40, new[] { 230, 160, 90, 20 })]
    [InlineData(270, 40, 80, new[] { 160, 20, 230, 90 })]
    public void Each_corner_comes_to_lie_where_it_belongs(int degrees, int width, int height, int[] expected)
    {
        var cut = Cut(new(new(40, 20), width, height, degrees * Math.PI / 180), 640);
        Assert.Equal((width, height), (cut.Width, cut.Height));
        Assert.All(Corners(cut).Zip(expected), pair => Assert.InRange(pair.First, pair.Second - 4, pair.Second + 4));
    }

    [Fact]
    public void A_large_part_is_made_small_and_what_lies_beyond_the_picture_is_grey()
    {
        var small = Cut(new(new(40, 20), 80, 40, 0), 20);
        Assert.Equal((20, 10), (small.Width, small.Height));
        Assert.All(Corners(small).Zip(Fields), pair => Assert.InRange(pair.First, pair.Second - 4, pair.Second + 4));
        // From 20 px left of the picture to its middle.
        var beyond = Cut(new(new(10, 20), 60, 40, 0), 640);
        Assert.InRange(beyond.Getpoint(4, 20)[0], 124, 132);
        Assert.InRange(beyond.Getpoint(25, 5)[0], 16, 24);
        Assert.Equal("“four.png” shows nothing there: the place lies outside of the picture.", Assert.Single(Jpeg(new(new(400, 20), 60, 40, 0), 640).Faults).Say);
    }

    private NetVips.Image Cut(PictureRegion region, int longest) => NetVips.Image.NewFromBuffer(Jpeg(region, longest).Value);

    private Lidoff.Numbers.Failing.Outcome<byte[]> Jpeg(PictureRegion region, int longest)
    {
        var pixels = Enumerable.Range(0, 80 * 40).Select(i => Fields[(i % 80 / 40) + (2 * (i / 80 / 20))]).ToArray();
        using (var image = NetVips.Image.NewFromMemory(pixels, 80, 40, 1, NetVips.Enums.BandFormat.Uchar)) File.WriteAllBytes(folder["four.png"], image.PngsaveBuffer());
        return UprightCrop.Jpeg(folder["four.png"], "four.png", PictureFile.Read(folder["four.png"], "four.png").Value, region, longest);
    }

    private static IEnumerable<double> Corners(NetVips.Image cut) =>
        new[] { (0.2, 0.2), (0.8, 0.2), (0.2, 0.8), (0.8, 0.8) }.Select(at => cut.Getpoint((int)(at.Item1 * cut.Width), (int)(at.Item2 * cut.Height))[0]);
}
