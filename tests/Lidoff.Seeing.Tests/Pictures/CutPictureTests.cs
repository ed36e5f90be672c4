using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Advising;
using Lidoff.Seeing.Boards;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Pictures;
using Lidoff.TestSupport;
using NetVips;

namespace Lidoff.Seeing.Tests.Pictures;

/// <summary>A picture whose header is whole and whose pixels break off: everybody who looks through it says the same sentence, and nobody throws.</summary>
public sealed class CutPictureTests : IDisposable
{
    private const string Says = "“half.png” is a PNG picture whose pixels cannot be read to the end: cut off or damaged. Copy it again from where it came.";

    private readonly TempFolder folder = new();
    private readonly string path;
    private readonly PictureHeader header;

    public CutPictureTests()
    {
        path = Path.Combine(folder.Path, "half.png");
        using (var picture = Image.Gaussnoise(1200, 1600, sigma: 20, mean: 120, seed: 1).Cast(Enums.BandFormat.Uchar)) File.WriteAllBytes(path, [.. picture.PngsaveBuffer().SkipLast(40_000)]);
        header = PictureFile.Read(path, "half.png").Value;
    }

    [Fact]
    public void Everybody_says_so()
    {
        using var copy = new MemoryStream();
        Assert.All(
            new IReadOnlyList<Fault>[]
            {
                PictureLook.At(path, "half.png", header).Faults, PictureMarks.Find(path, "half.png", header).Faults, TargetSearch.At(path, "half.png", header).Faults, FoundScales.At(path, "half.png", header).Faults,
                PictureEdges.Read(path, "half.png", header, [new(600, 1500), new(700, 1590)], 1).Faults, PictureWorth.Of(path, "half.png", header).Faults, Thumbnail.Jpeg(path, "half.png", header, 400).Faults,
                SharedCopy.Write(path, "half.png", header, copy).Faults, FlatPicture.Draw(path, "half.png", header, new("board", "picture", new(1, 0, 0, 0, 1, 0, 0, 0, 1)), 1200, 1600).Faults,
            },
            faults => Assert.Equal(Says, Assert.Single(faults).Say));
    }

    public void Dispose() => folder.Dispose();
}
