using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Reading.Spots;

namespace Lidoff.Seeing.Reading.Parts;

/// <summary>Looks for text in a picture tile by tile: from the whole of it down to its own pixels, each tile half as wide as those before and overlapping its neighbours.</summary>
internal static class PartTiles
{
    // Of a tile's side from one to the next: a mark of up to a third of a tile lies whole in one of them, a larger one in those twice as wide.
    private const double Step = 2.0 / 3;

    // Lines lower than that on the sheet are found closer up, or are no text; more lines together than a part carries are a label or a table. Choices of ours.
    private const double Lowest = 7;
    private const int MostOfAPart = 8;

    // What is nearer to a tile's rim than that, in heights of a line, may go on beyond it.
    private const double Rim = 0.5;

    /// <summary>The tiles of a picture, the largest first; in the smallest a pixel of the picture is one of the finder's sheet.</summary>
    public static IReadOnlyList<PictureRegion> Of(double width, double height)
    {
        var (tiles, side) = (new List<PictureRegion>(), (double)FinderSheet.LongSide);
        while (side < Math.Max(width, height)) side *= 2;
        for (; side >= FinderSheet.LongSide; side /= 2)
        {
            var (across, down) = (Math.Min(side, width), Math.Min(side, height));
            tiles.AddRange(Middles(height, side).SelectMany(y => Middles(width, side).Select(x => new PictureRegion(new(x, y), across, down, 0))));
        }

        return tiles;
    }

    /// <summary>The text in a tile; what runs out of it where the picture goes on is another tile's.</summary>
    public static IReadOnlyList<TextSpot> Text(IReadingNetworks networks, GreyPyramid picture, PictureRegion tile, double width, double height)
    {
        var sheet = FinderSheet.Of(picture, tile);
        if (sheet.IsEven) return [];
        // The finder of bodies also finds more of the text that is strewn over a board: the other one looks for a mark on its body.
        var lines = LineFinder.Find(networks.Bodies(sheet)).Select(line => line.Outline).Where(line => line.Height >= Lowest).ToList();
        bool IsWhole(PictureRegion around, double line) => sheet.ToPicture(around.Grown(Rim * line)).Corners.All(c => tile.Holds(c) || c.X < 0 || c.Y < 0 || c.X > width || c.Y > height);
        return
        [
            .. TextBlock.All(lines).Where(block => block.Lines <= MostOfAPart && IsWhole(block.Around, block.Height))
                .Select(block => new TextSpot(sheet.ToPicture(block.Around), block.Height * sheet.Step, block.Height)),
        ];
    }

    private static IEnumerable<double> Middles(double length, double side)
    {
        if (side >= length) return [length / 2];
        var count = (int)Math.Ceiling((length - side) / (Step * side)) + 1;
        return Enumerable.Range(0, count).Select(i => (side / 2) + ((length - side) * i / (count - 1)));
    }
}
