using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Seeing.Reading.Spots;

/// <summary>Reads the mark of a spot in the pictures that show it: finds the body in each, scans it, and combines what was scanned. The networks must be there.</summary>
public sealed class SpotReader(IReadingNetworks networks)
{
    // An outline follows the body's edge, where print may begin; a little around it costs nothing.
    private const double Around = 0.04;

    // A body found in a box that was drawn around it is as large as the box or smaller, and no speck in it. Choices of ours.
    private const double LeastOfBox = 0.2;
    private const double MostOfBox = 1.15;

    // Sums of line probabilities this near to the best one are no difference. A choice of ours.
    private const double AboutAsWell = 0.9;

    // What takes up that much of a picture may be a board, whose text is strewn over it. A choice of ours.
    private const double Large = 0.3;

    // Where no body is seen at all, a single sign may be anything. A choice of ours.
    private const int LeastOfAMark = 3;

    private readonly PictureReading reading = new(networks);
    private readonly MarkReader reader = new(networks);

    /// <summary>Scans a spot in one picture; a fault says that its body was not found there, or why the picture cannot be read.</summary>
    public Outcome<SpotScan> Scan(string spot, SpotPicture picture)
    {
        Guard.NotNull(picture);
        if (picture.Outline is { } outline) return In(picture, outline.Grown(Around * Math.Max(outline.Width, outline.Height)));
        if (picture.Box is { } box) return Body(picture, box.Middle).Then(found => In(picture, Within(found, box)));
        return Body(picture, picture.At!.Value).Then(found => found switch
        {
            { } body when picture.Others.Any(body.Holds) => ReadingSentences.BoardNotBody(spot, picture.Name),
            { } body => In(picture, body).Then(scan => IsLarge(body, picture) && scan.Read.Lines.Count > 0 && !IsOneMark(scan) ? ReadingSentences.BoardNotBody(spot, picture.Name) : (Outcome<SpotScan>)scan),
            _ => Filling(spot, picture),
        });
    }

    /// <summary>Makes one reading of scans of one mark: those that have a line in common are combined, the others left out and told. Where none succeeded, all their faults.</summary>
    /// <param name="spot">What the mark stands on.</param>
    /// <param name="pictures">The pictures that show it.</param>
    /// <param name="scans">What became of each of them, in their order.</param>
    /// <param name="unopened">Faults of pictures that could not be opened; one picture or fault at least.</param>
    /// <param name="program">Version of the program.</param>
    public Outcome<ReadingSighting> Weigh(string spot, IReadOnlyList<SpotPicture> pictures, IReadOnlyList<Outcome<SpotScan>> scans, IReadOnlyList<Fault> unopened, string program)
    {
        List<Fault> faults = [.. Guard.NotNull(scans).SelectMany(scan => scan.Faults), .. Guard.NotNull(unopened)];
        Guard.That(scans.Count == Guard.NotNull(pictures).Count && scans.Count + faults.Count > 0, "a scan for each picture, and one picture or fault at least");
        var scanned = scans.Where(scan => scan.Ok).Select(scan => scan.Value).ToList();
        if (scanned.Count == 0) return Outcome<ReadingSighting>.Failed(faults);
        var reading = Combine(spot, scanned, program);
        return reading with
        {
            Besides = [.. pictures.Select(picture => picture.Sha256).Except(reading.Pictures, StringComparer.Ordinal)],
            Says = [.. reading.Says, .. faults.Select(fault => fault.Say)],
        };
    }

    private ReadingSighting Combine(string spot, List<SpotScan> scans, string program)
    {
        var legible = BestFirst(scans.Where(scan => scan.Read.Lines.Count > 0));
        if (legible.Count == 0) legible = [scans[0]];
        var (read, says) = (legible[0].Read, new List<string>());
        var used = legible.Take(1).ToList();
        foreach (var scan in legible.Skip(1))
        {
            if (MarkCombining.Of([.. used.Append(scan).Select(each => each.Mark)], networks.LineTemperature).TryValue(out var both))
            {
                (read, used) = (both with { Says = legible[0].Read.Says }, [.. used, scan]);
            }
            else
            {
                says.Add(ReadingSentences.LeftOut(scan.Picture.Name, ReadingSentences.OtherMark));
            }
        }

        says.AddRange(scans.Except(legible).Select(scan => ReadingSentences.LeftOut(scan.Picture.Name, ReadingSentences.NothingRead)));
        var sighting = ReadingSighting.Of(spot, used.ConvertAll(scan => scan.Picture.Sha256), used[0].Region, read, networks, program);
        return sighting with { Says = [.. sighting.Says, .. says] };
    }

    // The one that reads best says how the mark lies; of those that read about as well, the one that shows it largest.
    private static List<SpotScan> BestFirst(IEnumerable<SpotScan> legible)
    {
        var sums = legible.Select(scan => (Scan: scan, Sum: scan.Read.Lines.Sum(line => line.Reading.P))).OrderByDescending(each => each.Sum).ToList();
        var well = sums.TakeWhile(each => each.Sum >= AboutAsWell * sums[0].Sum).OrderByDescending(each => each.Scan.Region.Width * each.Scan.Region.Height);
        return [.. well.Concat(sums.SkipWhile(each => each.Sum >= AboutAsWell * sums[0].Sum)).Select(each => each.Scan)];
    }

    private Outcome<PictureRegion?> Body(SpotPicture picture, PicturePoint at) => reading.Body(picture.Path, picture.Name, picture.Header, at);

    private static PictureRegion Within(PictureRegion? found, PixelBox box) =>
        found is { } body && body.Width * body.Height is var area && area >= LeastOfBox * box.Width * box.Height && area <= MostOfBox * box.Width * box.Height
            ? body : PictureRegion.Box(box.X, box.Y, box.Width, box.Height);

    private Outcome<SpotScan> In(SpotPicture picture, PictureRegion region) => reading.Scan(picture.Path, picture.Name, picture.Header, region).Then<SpotScan>(mark =>
    {
        var read = reader.Weigh(mark);
        var kept = read.Lines.Select(line => line.Region).ToHashSet();
        return new SpotScan(picture, region, mark with { Lines = [.. mark.Lines.Where(line => kept.Contains(line.Outline))] }, read);
    });

    // A close picture is all body: then the whole of it is read, where what stands there is one block of text and nobody else was pointed at.
    private Outcome<SpotScan> Filling(string spot, SpotPicture picture)
    {
        var none = ReadingSentences.NoBody(spot, picture.Name);
        if (picture.Others.Count > 0) return none;
        var whole = PictureRegion.Box(0, 0, picture.Header.Width, picture.Header.Height);
        return GreyPyramidFile.Read(picture.Path, picture.Name, picture.Header, whole).Then(grey =>
        {
            var sheet = FinderSheet.Of(grey, whole);
            var (x, y) = whole.Inside(picture.At!.Value);
            BodyFinder.Find(networks.Find(sheet), new((sheet.ValidWidth / 2.0) + (x / sheet.Step), (sheet.ValidHeight / 2.0) + (y / sheet.Step)), out var cut);
            return cut ? In(picture, whole).Then(scan => IsOneMark(scan) && scan.Read.Lines.Sum(line => line.Reading.Text.Length) >= LeastOfAMark ? scan : (Outcome<SpotScan>)none) : none;
        });
    }

    private static bool IsLarge(PictureRegion body, SpotPicture picture) => body.Width * body.Height >= Large * picture.Header.Width * picture.Header.Height;

    private static bool IsOneMark(SpotScan scan) => scan.Read.Lines.Count > 0
        && TextBlock.IsOne([.. scan.Read.Lines.Select(line => line.Region)], scan.Picture.At!.Value, PictureRegion.Box(0, 0, scan.Picture.Header.Width, scan.Picture.Header.Height));
}
