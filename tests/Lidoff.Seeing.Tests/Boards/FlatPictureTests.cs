using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Rendering;
using NetVips;

namespace Lidoff.Seeing.Tests.Boards;

/// <summary>
/// Both sides drawn flat: white squares where the pinhole camera of <see cref="BenchBoard"/>, which knows nothing of homographies, truly
/// shows points of the board must come out where the board has them.
/// </summary>
public sealed class FlatPictureTests : IDisposable
{
    private const int HeightPx = 520;
    private static readonly BoardPoint[] Points = [new(9, 9), new(20, 13), new(31, 19), new(12, 20), new(30, 6)];
    private readonly string folder = Directory.CreateTempSubdirectory("lidoff-test-").FullName;

    [Theory]
    [InlineData(1, false, false)]
    [InlineData(2, true, false)]
    [InlineData(3, true, true)]
    public void Places_of_a_slanted_picture_of_either_side_come_out_where_the_board_has_them(int seed, bool bottom, bool fromBelow)
    {
        var bench = new BenchBoard(seed);
        var (front, pose) = (bench.Pose(), bench.Pose(tilt: 12));
        var known = bench.Features.Select(each => new KnownPlace(each.Key, each.Value.X, each.Value.Y, 0.001)).ToList();
        var board = BoardFit.One([bench.Picture("a", front, false, 0.02), bench.Picture("b", pose, bottom, 0.02)], known);
        var sheet = new BoardSheet(4, 3, 36, 23, fromBelow);
        var (path, header) = Dots(pose, bottom);
        var toPicture = (Projective)sheet.ToBoard(HeightPx).Then(board.Picture("b")!.ToPicture);
        var width = (int)Math.Round(HeightPx * sheet.Aspect);
        using var flat = Image.WebploadBuffer(FlatPicture.Draw(path, "b.png", header, toPicture, width, HeightPx).Value);
        Assert.Equal((width, HeightPx), (flat.Width, flat.Height));
        var mm = 20.0 / HeightPx;
        foreach (var point in Points)
        {
            var (x, y) = ((fromBelow ? 36 - point.X : point.X - 4) / mm, (point.Y - 3) / mm);
            var (foundX, foundY) = Bright(flat, x, y, 14);
            // Half a pixel drawn is 19 µm; the board itself is known to about a micrometre here.
            Assert.InRange(Math.Sqrt(((foundX - x) * (foundX - x)) + ((foundY - y) * (foundY - y))), 0, 0.5);
        }
    }

    [Fact]
    public void Where_the_picture_shows_nothing_the_drawing_is_clear()
    {
        var (path, header) = Dots(new BenchBoard(5).Pose(tilt: 0), false);
        // A sheet twice as wide as the picture, beginning at its middle.
        using var flat = Image.WebploadBuffer(FlatPicture.Draw(path, "b.png", header, new("d", "p", new(header.Width / 100.0, 0, header.Width / 2.0, 0, header.Width / 100.0, 0, 0, 0, 1)), 200, 50).Value);
        Assert.Equal(255, flat.Getpoint(20, 20)[3]);
        Assert.Equal(0, flat.Getpoint(120, 20)[3]);
    }

    [Fact]
    public void A_sheet_holds_what_both_pictures_show_and_every_place_pointed_at()
    {
        // A whole board at 10 px/mm, and a close-up of 8 × 6 mm of it from below at 100 px/mm whose corner lies at 30, 10 mm.
        var whole = Square("whole", 10, 0, 0, mirrored: false);
        var near = Square("near", 100, 30, 10, mirrored: true);
        var sheet = BoardSheet.Common((whole, 400, 260), (near, 800, 600), ([new(100, 200)], []))!;
        // The close-up runs from x = 22 to 30 as seen from the top; the place pointed at in the whole lies at 10, 20 mm. 3 % of air.
        Assert.Equal(10 - (0.03 * 20), sheet.MinX, 6);
        Assert.Equal(30 + (0.03 * 20), sheet.MaxX, 6);
        Assert.Equal(10 - (0.03 * 10), sheet.MinY, 6);
        Assert.Equal(20 + (0.03 * 10), sheet.MaxY, 6);
        // Two close-ups of different corners have nothing in common.
        Assert.Null(BoardSheet.Common((near, 800, 600), (Square("other", 100, 0, 0, mirrored: false), 800, 600), ([], [])));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static LaidPicture Square(string name, double pxPerMm, double x, double y, bool mirrored) => new(
        name, name, mirrored, new("board", name, new(mirrored ? -pxPerMm : pxPerMm, 0, (mirrored ? 1 : -1) * x * pxPerMm, 0, pxPerMm, -y * pxPerMm, 0, 0, 1)), [], [], []);

    private (string Path, PictureHeader Header) Dots(Scene pose, bool bottom)
    {
        var path = Path.Combine(folder, "b.png");
        var black = Image.Black(pose.Width, pose.Height);
        foreach (var point in Points)
        {
            var at = BenchBoard.Show(pose, point, bottom);
            // 40 px wide: about a twentieth of the drawing's pixels, so that its middle is found to a fraction of one.
            using var white = Image.Black(40, 40) + 255;
            var next = black.Insert(white.Cast(Enums.BandFormat.Uchar), (int)Math.Round(at.X) - 20, (int)Math.Round(at.Y) - 20);
            black.Dispose();
            black = next;
        }

        black.Pngsave(path);
        black.Dispose();
        return (path, PictureFile.Read(path, "b.png").Value);
    }

    // The middle of what is bright around a place.
    private static (double X, double Y) Bright(Image flat, double x, double y, int reach)
    {
        var (sum, sumX, sumY) = (0.0, 0.0, 0.0);
        for (var py = (int)y - reach; py <= (int)y + reach; py++)
        {
            for (var px = (int)x - reach; px <= (int)x + reach; px++)
            {
                var value = flat.Getpoint(px, py)[0];
                if (value < 60) continue;
                (sum, sumX, sumY) = (sum + value, sumX + (value * (px + 0.5)), sumY + (value * (py + 0.5)));
            }
        }

        Assert.True(sum > 0, $"nothing bright near {x}, {y}");
        return (sumX / sum, sumY / sum);
    }
}
