using Lidoff.Evidence.Pictures;
using Lidoff.Evidence.Working;
using Lidoff.Seeing.Pictures;
using NetVips;

namespace Lidoff.Seeing.Tests.Pictures;

/// <summary>
/// Tiles and thumbnails of pictures that their orientation tag turns and mirrors, and what is left behind by making them. The outside
/// reference for the turns is the picture library's own upright picture, made whole.
/// </summary>
public sealed class TurnedPictureTests : IDisposable
{
    private const int Width = 700, Height = 391;
    private readonly TemporaryFolder folder = new();
    private readonly string sha = new('c', 64);

    public void Dispose() => folder.Dispose();

    public static TheoryData<int> Orientations => [1, 2, 3, 4, 5, 6, 7, 8];

    [Theory]
    [MemberData(nameof(Orientations))]
    public void Tiles_and_thumbnail_are_the_upright_picture(int orientation)
    {
        var path = Stored(orientation);
        var header = PictureFile.Read(path, "turned.jpg").Value;
        using var stored = Image.Jpegload(path);
        using var upright = stored.Autorot();
        Assert.Equal((upright.Width, upright.Height), (header.Width, header.Height));

        using var small = Image.NewFromBuffer(Thumbnail.Jpeg(path, "turned.jpg", header, 350).Value);
        using var halved = upright.ThumbnailImage(350, height: 350, noRotate: true);
        Assert.InRange((small - halved).Abs().Avg(), 0, 4);

        var tiles = TilePyramid.Make(path, "turned.jpg", header, sha, folder.Root, new Quiet()).Value;
        Assert.Equal((header.Width, header.Height), (tiles.Width, tiles.Height));
        // Pixel by pixel at the top, and a level below halved: begun at the upright picture's own first row and column.
        foreach (var below in new[] { 0, 1 })
        {
            var (width, height) = tiles.Size(tiles.TopLevel - below);
            using var whole = below == 0 ? upright.Copy() : upright.Shrink(2, 2, ceil: true);
            Assert.Equal((whole.Width, whole.Height), (width, height));
            for (var row = 0; row * TileSource.TileSide < height; row++)
            {
                for (var column = 0; column * TileSource.TileSide < width; column++)
                {
                    using var tile = Image.NewFromBuffer(tiles.Jpeg(tiles.TopLevel - below, column, row).Value);
                    var (left, top) = (Math.Max(0, (column * TileSource.TileSide) - TileSource.Overlap), Math.Max(0, (row * TileSource.TileSide) - TileSource.Overlap));
                    Assert.Equal((Math.Min(width, ((column + 1) * TileSource.TileSide) + 1) - left, Math.Min(height, ((row + 1) * TileSource.TileSide) + 1) - top), (tile.Width, tile.Height));
                    using var part = whole.Crop(left, top, tile.Width, tile.Height);
                    // Two more lossy savings of a smooth picture: a few steps at most; a tile in the wrong place is off by tens.
                    Assert.InRange((tile - part).Abs().Avg(), 0, 4);
                }
            }
        }

        // The levels above the pyramid's own pages, down to one pixel.
        for (var level = 0; level < tiles.TopLevel - 1; level++)
        {
            using var tile = Image.NewFromBuffer(tiles.Jpeg(level, 0, 0).Value);
            var (width, height) = tiles.Size(level);
            Assert.Equal((Math.Min(width, TileSource.TileSide + 1), Math.Min(height, TileSource.TileSide + 1)), (tile.Width, tile.Height));
        }
    }

    [Theory]
    [MemberData(nameof(Orientations))]
    public void A_rectangle_lies_in_the_file_where_its_corners_lie(int orientation)
    {
        // The project's own map of points is tested against the Exif standard's table by itself.
        var map = ExifOrientation.ToUpright("file", "picture", orientation, new(Width, Height));
        var (x, y, w, h) = orientation >= 5 ? (11, 500, 70, 40) : (500, 11, 40, 70);
        var stored = PictureTurn.Stored(orientation, Width, Height, x, y, w, h);
        var corners = new[] { map.Map(new(stored.Left, stored.Top)), map.Map(new(stored.Left + stored.Width, stored.Top + stored.Height)) };
        Assert.Equal((x, y, x + w, y + h), (Whole(corners.Min(c => c.X)), Whole(corners.Min(c => c.Y)), Whole(corners.Max(c => c.X)), Whole(corners.Max(c => c.Y))));

        static int Whole(double value) => (int)Math.Round(value);
    }

    [Fact]
    public void Stopping_leaves_nothing()
    {
        var path = Stored(6);
        var header = PictureFile.Read(path, "turned.jpg").Value;
        var target = TilePyramid.PathOf(folder.Root, sha);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => TilePyramid.Make(path, "turned.jpg", header, sha, folder.Root, new Quiet(stop.Token)));
        Assert.Empty(Directory.GetFiles(Path.GetDirectoryName(target)!));
        Assert.True(TilePyramid.Make(path, "turned.jpg", header, sha, folder.Root, new Quiet()).Ok);
        Assert.Equal([target], Directory.GetFiles(Path.GetDirectoryName(target)!));
    }

    [Fact]
    public void A_kept_thumbnail_is_made_once_and_a_cache_that_is_none_keeps_nobody_from_looking()
    {
        var path = Stored(1);
        var header = PictureFile.Read(path, "turned.jpg").Value;
        Assert.False(Thumbnail.IsKept(sha, 160, folder.Root));
        var made = Thumbnail.Kept(path, "turned.jpg", header, 160, sha, folder.Root).Value;
        Assert.True(Thumbnail.IsKept(sha, 160, folder.Root));
        File.Delete(path);
        Assert.Equal(made, Thumbnail.Kept(path, "turned.jpg", header, 160, sha, folder.Root).Value);

        var blocked = folder.File("blocked");
        File.WriteAllText(blocked, "a file where the folder should be");
        Assert.True(Thumbnail.Kept(Stored(1), "turned.jpg", header, 160, sha, blocked).Ok);
    }

    [Fact]
    public void A_jpeg_in_passes_has_a_cap_of_its_own()
    {
        var path = folder.File("passes.jpg");
        // Two bytes for each coefficient, of which colour has a quarter as many where it is stored at half resolution, and none in a grey one (ITU-T T.81, A.1.1 and A.2.3).
        foreach (var (colour, grey, bytes) in new[] { (Enums.ForeignSubsample.On, false, 3), (Enums.ForeignSubsample.Off, true, 2), (Enums.ForeignSubsample.Off, false, 6) })
        {
            using var image = Smooth();
            using var saved = grey ? image.Colourspace(Enums.Interpretation.Bw) : image.Copy();
            saved.Jpegsave(path, interlace: true, subsampleMode: colour);
            var header = PictureFile.Read(path, "passes.jpg").Value;
            Assert.Equal((true, bytes), (header.InPasses, header.BytesAPixelInPasses));
        }

        var stored = PictureFile.Read(Stored(1), "turned.jpg").Value;
        Assert.Equal((false, 0), (stored.InPasses, stored.BytesAPixelInPasses));
        Assert.Equal(
            "“passes.jpg” has 700 × 391 pixels in passes (a progressive JPEG), which must be held in memory as a whole, 1 MB; Lidoff opens such ones up to 0 MB. Save it once more as an ordinary (baseline) JPEG, or as TIFF or PNG. The file is kept as it is.",
            Assert.Single(PictureFile.Read(path, "passes.jpg", new(MostBytesInPasses: 100_000)).Faults).Say);
    }

    private string Stored(int orientation)
    {
        var path = folder.File("turned.jpg");
        using var image = Smooth();
        using var tagged = image.Mutate(each => each.Set(GValue.GIntType, "orientation", orientation));
        tagged.Jpegsave(path, q: 95);
        return path;
    }

    private static Image Smooth() =>
        (Image.Gaussnoise(Width, Height, sigma: 400, mean: 128, seed: 3).Gaussblur(8) * 1.0).Bandjoin(90, 140).Cast(Enums.BandFormat.Uchar).Copy(interpretation: Enums.Interpretation.Srgb);

    private sealed class Quiet(CancellationToken stop = default) : IJobReport
    {
        public CancellationToken Stop => stop;

        public void Say(long done, long total, string words)
        {
        }
    }
}
