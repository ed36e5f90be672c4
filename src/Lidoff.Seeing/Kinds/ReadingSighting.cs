using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed.Codes;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;
using Lidoff.Seeing.Reading.Networks;

namespace Lidoff.Seeing.Kinds;

/// <summary>
/// A mark as a machine read it, once, in one picture or several of it. Files and networks are named by content hash, numbers are rounded. A
/// person's own mark stands beside it and counts before it.
/// </summary>
/// <param name="Spot">What the mark stands on.</param>
/// <param name="Pictures">The pictures; places lie in the first unless a line says otherwise.</param>
/// <param name="Region">What part of the first picture was looked at.</param>
/// <param name="TurnDeg">Clockwise turn that makes the mark upright there, degrees.</param>
/// <param name="Lines">What was read, from the top; none where nothing was.</param>
/// <param name="Otherwise">The lines read the other way up, where it was not clear which is right.</param>
/// <param name="Dot">Pin-1 dot in the first picture; null where none was seen.</param>
/// <param name="Networks">Hashes of finder and reader.</param>
/// <param name="Settings">What they ran by.</param>
/// <param name="Program">Version of the program that read.</param>
/// <param name="Says">What was said of it.</param>
public sealed record ReadingSighting(
    string Spot,
    ValueList<string> Pictures,
    PictureRegion Region,
    double TurnDeg,
    ValueList<ReadingLine> Lines,
    ValueList<string> Otherwise,
    PicturePoint? Dot,
    ValueList<string> Networks,
    string Settings,
    string Program,
    ValueList<string> Says)
{
    /// <summary>Pictures of it that were looked at as well and are no part of it: nothing could be read in them, or another mark.</summary>
    public ValueList<string> Besides { get; init; } = [];

    /// <summary>How surely the dot is one, 0 to 1; null where none was seen or nobody said.</summary>
    public double? DotP { get; init; }

    /// <summary>Marks in the first picture that are no text.</summary>
    public ValueList<ReadingEmblem> Emblems { get; init; } = [];

    /// <summary>Colour bands, from one end of the body to the other, where there is no text but them.</summary>
    public ValueList<ReadingBand> Bands { get; init; } = [];

    /// <summary>How many times likelier than at the last band the code begins at the first, by where they stand.</summary>
    public double BandsBegin { get; init; } = 1;

    /// <summary>What the bands may say; null where there are none.</summary>
    /// <param name="sort">What carries them; null where that is not known.</param>
    public BandOdds? BandOdds(PassiveSort? sort) => Bands.Count == 0 ? null : Numbers.Typed.Codes.Bands.BandOdds.Of([.. Bands.Select(band => band.Shares)], BandsBegin, sort);

    /// <summary>The bands by their likeliest colours, as one would type them; empty where there are none.</summary>
    public string BandsWritten => string.Join(' ', Bands.Select(band => TypedBands.Name(band.Top[0].Colour)));

    /// <summary>Where the dot lies on the upright body, and what that says of the turn; null where none was seen.</summary>
    public PinOne? PinOne => Dot is { } dot ? PinOne.Of(dot, DotP ?? 1, Region, TurnDeg) : null;

    /// <summary>Probability that the likeliest reading of every line is right from end to end, lines taken as independent; 0 where nothing was read.</summary>
    public double P => Lines.Count == 0 ? 0 : Lines.Aggregate(1.0, (p, line) => p * line.P);

    /// <summary>The mark as one would be noted by a person; null where nothing was read.</summary>
    public MarkSighting? Mark => Lines.Count == 0 ? null : new(Spot, [.. Lines.Select(line => line.Line)]);

    /// <summary>What was read, rounded; of more lines than a mark may have those that go beyond it are told and left out.</summary>
    /// <param name="spot">What the mark stands on.</param>
    /// <param name="pictures">Hashes of the pictures.</param>
    /// <param name="region">What part of the first was looked at.</param>
    /// <param name="read">What was read.</param>
    /// <param name="networks">By what.</param>
    /// <param name="program">Version of the program.</param>
    public static ReadingSighting Of(string spot, IReadOnlyList<string> pictures, PictureRegion region, ReadMark read, IReadingNetworks networks, string program)
    {
        Guard.NotNull(read);
        Guard.NotNull(networks);
        List<string> says = [.. read.Says];
        if (read.Lines.Count > MarkLines.Most) says.Add(SeeingSentences.ReadingCut(read.Lines.Count, MarkLines.Most));
        return new(
            spot,
            pictures.ToValueList(),
            new(Rounded(region.Middle), ReadWriter.Px(region.Width), ReadWriter.Px(region.Height), Math.Round(region.Turn, 4)),
            read.TurnDeg,
            [.. read.Lines.Take(MarkLines.Most).Select(Line)],
            [.. read.Otherwise.Take(MarkLines.Most).Select(line => line.Reading.Text).Where(text => text.Length > 0)],
            read.Dot is { } dot ? Rounded(dot) : null,
            networks.Hashes.ToValueList(),
            networks.Settings,
            program,
            [.. says])
        {
            DotP = read.PinOne is { } pin ? ReadWriter.Share(pin.P) : null,
            Emblems = [.. read.Emblems.Take(EmblemFinder.Most).Select(emblem => new ReadingEmblem([.. emblem.Outline.Corners.Select(Rounded)], ReadWriter.Share(emblem.P)))],
        };
    }

    private static ReadingLine Line(ReadLine line)
    {
        ValueList<MarkPlace> places = [.. line.Reading.Places.Select(place => new MarkPlace([.. place.Top.Select(each => new MarkGlyph(each.Symbol, ReadWriter.Share(each.P)))]))];
        return new(
            MarkLines.OfPlaces(places),
            [.. line.Reading.Readings.Where(each => each.Text.Length > 0).Select(each => new LineText(each.Text, ReadWriter.Share(each.P)))],
            [.. line.Outline.Select(Rounded)],
            line.Picture)
        {
            Also = [.. line.Also.Select(each => new LineElsewhere(each.Picture, [.. each.Region.Corners.Select(Rounded)]))],
        };
    }

    private static PicturePoint Rounded(PicturePoint point) => new(ReadWriter.Px(point.X), ReadWriter.Px(point.Y));
}
