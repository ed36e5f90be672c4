using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading.Bands;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;

namespace Lidoff.Seeing.Reading.Spots;

/// <summary>Colour bands where no text could be read on a spot: in the first picture that shows them.</summary>
internal static class SpotBands
{
    // Fewer bands, or such as are likelier something else, are none: stripes stand on other things too. Choices of ours.
    private const int Least = 3;
    private const double MostDoubt = 0.2;

    // A body that was outlined or found needs a little of its ground around it.
    private const double Around = 0.15;

    // A colour less likely than that is not kept.
    private const double WorthKeeping = 0.001;

    /// <summary>The reading with its bands in the place of what was read, or as it is where there are none.</summary>
    public static ReadingSighting Instead(ReadingSighting reading, IReadOnlyList<SpotScan> scans)
    {
        foreach (var scan in scans)
        {
            var picture = scan.Picture;
            var where = picture is { Outline: null, Box: { } box } ? PictureRegion.Box(box.X, box.Y, box.Width, box.Height) : scan.Region.Grown(Around * Math.Min(scan.Region.Width, scan.Region.Height));
            if (!BandReader.Read(picture.Path, picture.Name, picture.Header, where).TryValue(out var seen) || seen.Bands.Count < Least || seen.Odds.NoneP > MostDoubt) continue;
            var body = seen.Body;
            var found = reading with
            {
                Pictures = [picture.Sha256],
                Region = new(new(ReadWriter.Px(body.Middle.X), ReadWriter.Px(body.Middle.Y)), ReadWriter.Px(body.Width), ReadWriter.Px(body.Height), Math.Round(body.Turn, 4)),
                TurnDeg = MarkReader.TurnOf(body.Turn),
                Lines = [],
                Otherwise = [],
                Dot = null,
                DotP = null,
                Emblems = [],
                Bands = [.. seen.Bands.Select(band => new ReadingBand([.. BandTable.All.Where(colour => band.Colours[colour] >= WorthKeeping).OrderByDescending(colour => band.Colours[colour]).Select(colour => (colour, ReadWriter.Share(band.Colours[colour])))]))],
                BandsBegin = Math.Round(seen.FirstToLast, 3),
            };
            return found with { Says = [ReadingSentences.BandsSeen(found.BandsWritten)] };
        }

        return reading;
    }
}
