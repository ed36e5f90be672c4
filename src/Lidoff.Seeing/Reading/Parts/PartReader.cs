using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Reading.Spots;

namespace Lidoff.Seeing.Reading.Parts;

/// <summary>
/// Finds and reads the marks of a whole board in one picture: text in overlapping tiles of it, each read by itself, of what several tiles show
/// the reading that is worth most, then the body around it. The networks must be there.
/// </summary>
public sealed class PartReader(IReadingNetworks networks)
{
    /// <summary>Longest side that is held, px: a picture of 20 megapixels as it is, a larger one shrunk.</summary>
    public const int LongSide = 6000;

    // In heights of a line: room that the finder wants around a mark, and how long its region is at least. As where text under a click is read.
    private const double Room = 1.2;
    private const double LeastAlong = 10;

    // Signs that are likelier than not, and how likely all of a line is right: a mark has three of them in a line at least. A worn line, of which
    // no whole reading is likely, has one more, and few that are open. Choices of ours, as where text under a click is read.
    private const int LeastOfAMark = 3;
    private const double Legible = 0.1;
    private const double MostOpen = 0.4;

    // In heights of a line: lines of one mark stand closer than that. Looser than under a click, where the rest would be a neighbour's. A choice of ours.
    private const double Together = 1.8;

    // Lines of one mark run the same way but for a bent one. A choice of ours.
    private const double Askew = Math.PI / 6;

    // What takes up that much of a picture is its board; around a body's edge, where print may begin, a little is read as well; what reads on
    // the body is not much less than what read on its text alone. Choices of ours.
    private const double Large = 0.3;
    private const double Around = 0.04;
    private const double AboutAsWell = 0.7;

    private const int MostParts = 200;

    private readonly MarkReader reader = new(networks);

    /// <summary>Brightness of a picture file as this reader wants it.</summary>
    public static Outcome<GreyPyramid> Open(string path, string name, PictureHeader header) =>
        GreyPyramidFile.Read(path, name, header, PictureRegion.Box(0, 0, Guard.NotNull(header).Width, header.Height), LongSide);

    /// <summary>Finds and reads.</summary>
    /// <param name="picture">Brightness of the picture.</param>
    /// <param name="header">Its header.</param>
    /// <param name="report">Told how many of how many steps are done; the number of all of them becomes known as it goes.</param>
    /// <param name="stop">Stops between two of them.</param>
    public PartsRead Read(GreyPyramid picture, PictureHeader header, Action<long, long> report, CancellationToken stop)
    {
        Guard.NotNull(picture);
        Guard.NotNull(report);
        var tiles = PartTiles.Of(Guard.NotNull(header).Width, header.Height);
        var (done, all) = (0L, (long)tiles.Count);
        void Next()
        {
            stop.ThrowIfCancellationRequested();
            report(done++, all);
        }

        var spots = new List<TextSpot>();
        foreach (var tile in tiles)
        {
            Next();
            spots.AddRange(PartTiles.Text(networks, picture, tile, header.Width, header.Height));
        }

        // The closest look at each is the one to read by.
        var fresh = new List<TextSpot>();
        foreach (var spot in spots.OrderByDescending(spot => spot.OnSheet)) if (!fresh.Exists(other => other.IsSame(spot))) fresh.Add(spot);
        all += fresh.Count;
        var texts = new List<FoundPart>();
        foreach (var spot in fresh)
        {
            Next();
            var region = spot.Around.Grown(Math.Max(Room * spot.Height, ((LeastAlong * spot.Height) - Math.Max(spot.Around.Width, spot.Around.Height)) / 2));
            if (Text(reader.Weigh(reader.Scan(picture, region))) is { } part) texts.Add(part);
        }

        var apart = Apart(texts);
        all += Math.Min(apart.Count, MostParts);
        var parts = new List<FoundPart>();
        while (apart.Count > 0 && parts.Count < MostParts)
        {
            Next();
            var part = OnItsBody(picture, header, apart, out var with);
            apart.RemoveAll(with.Contains);
            parts.Add(part);
        }

        List<string> says = [];
        if (parts.Count == 0) says.Add(ReadingSentences.NoParts);
        if (apart.Count > 0) says.Add(ReadingSentences.PartsLeft(apart.Count));
        if (Math.Max(header.Width, header.Height) > LongSide) says.Add(ReadingSentences.PartsShrunk(LongSide));
        return new([.. parts.OrderByDescending(part => part.HasBody).ThenBy(part => part.Region.Middle.Y).ThenBy(part => part.Region.Middle.X)], [.. says]);
    }

    // The first of them with the body around it, if one is found, and all that stand on that body.
    private FoundPart OnItsBody(GreyPyramid picture, PictureHeader header, List<FoundPart> left, out List<FoundPart> with)
    {
        var part = left[0];
        with = [part];
        var line = part.Read.Lines.MaxBy(each => each.Reading.P * each.Reading.Text.Length)!;
        // Seen from one place of it a body may be cut through by its own text.
        if ((reader.Body(picture, line.Region.Middle) ?? reader.Body(picture, part.Region.Middle)) is not { } body || body.Width * body.Height >= Large * header.Width * header.Height) return part;
        List<FoundPart> on = [.. left.Where(each => each == part || each.Read.Lines.Any(other => body.Holds(other.Region.Middle)))];
        var whole = new FoundPart(body, true, reader.Weigh(reader.Scan(picture, body.Grown(Around * Math.Max(body.Width, body.Height)))));
        if (whole.Worth < AboutAsWell * on.Sum(each => each.Worth)) return part;
        with = on;
        return whole;
    }

    // Without its body only what can be read tells a mark from vias and solder beside it.
    private static FoundPart? Text(ReadMark read)
    {
        List<ReadLine> sure = [.. read.Lines.Where(line => Known(line) > 0 && (line.Reading.P >= Legible || (Known(line) > LeastOfAMark && Known(line) >= (1 - MostOpen) * line.Reading.Text.Length)))];
        FoundPart Part((PictureRegion Around, double Height, int Lines) block)
        {
            // What stands there at another turn is the mark of a part beside it.
            List<ReadLine> lines = [.. sure.Where(line => block.Around.Holds(line.Region.Middle) && Angles.Between(line.Region.Turn, block.Around.Turn) <= Askew)];
            var (around, height, _) = TextBlock.Around([.. lines.Select(line => line.Region)]);
            return new(around.Grown(Room * height), false, read with { Lines = [.. lines] });
        }

        // Of several texts that lie apart in what was looked at the one that reads best; the others are found by themselves.
        return TextBlock.All([.. sure.Select(line => line.Region)], Together).Select(Part)
            .Where(part => part.Read.Lines.Any(line => Known(line) >= LeastOfAMark)).MaxBy(part => part.Worth);
    }

    private static int Known(ReadLine line) => line.Reading.Text.Count(letter => letter != '?');

    // Of readings that share a line the one that is worth most.
    private static List<FoundPart> Apart(List<FoundPart> texts)
    {
        var kept = new List<FoundPart>();
        foreach (var text in texts.OrderByDescending(each => each.Worth)) if (!kept.Exists(other => ShareALine(other.Read, text.Read))) kept.Add(text);
        return kept;
    }

    private static bool ShareALine(ReadMark a, ReadMark b) => a.Lines.Any(one => b.Lines.Any(other => one.Region.Holds(other.Region.Middle) || other.Region.Holds(one.Region.Middle)));
}
