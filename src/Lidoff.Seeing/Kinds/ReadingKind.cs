using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Kinds;

/// <summary>A machine read a mark. Stored once and never read again in silence; what a person typed counts before it.</summary>
public sealed class ReadingKind : EvidenceKind<ReadingSighting>
{
    private const int LongestName = 255;
    /// <summary>Most pictures that one reading names.</summary>
    public const int MostPictures = 8;
    private const int MostReadings = 20;
    private const int Corners = 4;
    private static readonly NumberRange Turns = new(0, 360);

    /// <summary>The kind's name.</summary>
    public const string Word = "reading";

    /// <inheritdoc/>
    public override string Name => Word;

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.MachineSighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "A machine read a mark: lines place by place with probabilities, whole readings, where they stand, and what it was read by. A mark that a person typed counts before it.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "what the mark stands on"),
        new("pictures", "texts", true, "content hashes of the pictures it was read in, of one mark"),
        new("besides", "texts", false, "pictures of it that were looked at as well, in which nothing could be read or another mark stands"),
        new("region", "numbers", true, "what part of the first was looked at: middle x and y, width, height (px), turn clockwise (rad)"),
        new("turn_deg", "number", true, "clockwise turn that makes the mark upright there, 0 to 360"),
        new("lines", "list", true, "lines from the top, each a list of places, each a list of [character, probability], with \"\" for nothing printed there; may be empty"),
        new("readings", "list", true, "for each line its whole readings, likeliest first, each [text, probability]"),
        new("outlines", "points", false, "for each line four corners, px, clockwise from the text's own top left"),
        new("in_picture", "whole numbers", false, "for each line which picture its corners lie in, from 0"),
        new("also", "list", false, "for each line where others of the pictures show it, each [picture from 0, x, y, … of four corners]"),
        new("otherwise", "texts", false, "the lines read the other way up, where it was not clear which is right"),
        new("dot", "point", false, "pin-1 dot in the first picture, px"),
        new("dot_p", "number", false, "how surely it is one, 0 to 1"),
        new("emblems", "points", false, "marks in the first picture that are no text: four corners each, px, clockwise"),
        new("emblems_p", "numbers", false, "how surely each of them is one, 0 to 1"),
        new("bands", "list", false, "colour bands from one end of the body to the other, each a list of [colour, probability], likeliest first"),
        new("bands_begin", "number", false, "how many times likelier than at the last band the code begins at the first, by where they stand (default 1)"),
        new("networks", "texts", true, "content hashes of the networks that found and read"),
        new("settings", "text", true, "what they ran by"),
        new("program", "text", true, "version of the program that read"),
        new("says", "texts", false, "what was said of it"),
    ];

    /// <summary>Writes the keys of one reading.</summary>
    public static void WriteKeys(Utf8JsonWriter json, ReadingSighting reading)
    {
        Guard.NotNull(json);
        Guard.NotNull(reading);
        json.WriteString("spot", reading.Spot);
        Texts(json, "pictures", reading.Pictures);
        if (reading.Besides.Count > 0) Texts(json, "besides", reading.Besides);
        json.WriteStartArray("region");
        foreach (var number in new[] { reading.Region.Middle.X, reading.Region.Middle.Y, reading.Region.Width, reading.Region.Height, reading.Region.Turn }) json.WriteNumberValue(number);
        json.WriteEndArray();
        json.WriteNumber("turn_deg", reading.TurnDeg);
        List(json, "lines", reading.Lines, line => List(json, null, line.Line.Places, place => List(json, null, place.Top, glyph => Pair(json, glyph.Character, glyph.P))));
        List(json, "readings", reading.Lines, line => List(json, null, line.Readings, each => Pair(json, each.Text, each.P)));
        List(json, "outlines", [.. reading.Lines.SelectMany(line => line.Outline)], point => Point(json, point));
        List(json, "in_picture", reading.Lines, line => json.WriteNumberValue(line.Picture));
        if (reading.Lines.Any(line => line.Also.Count > 0)) List(json, "also", reading.Lines, line => List(json, null, line.Also, each => List(json, null, [each.Picture, .. each.Outline.SelectMany(corner => new[] { corner.X, corner.Y })], json.WriteNumberValue)));
        if (reading.Otherwise.Count > 0) Texts(json, "otherwise", reading.Otherwise);
        if (reading.Dot is { } dot)
        {
            json.WritePropertyName("dot");
            Point(json, dot);
        }

        if (reading.DotP is { } dotP) json.WriteNumber("dot_p", dotP);
        if (reading.Emblems.Count > 0)
        {
            List(json, "emblems", [.. reading.Emblems.SelectMany(emblem => emblem.Outline)], point => Point(json, point));
            List(json, "emblems_p", reading.Emblems, emblem => json.WriteNumberValue(emblem.P));
        }

        if (reading.Bands.Count > 0)
        {
            List(json, "bands", reading.Bands, band => List(json, null, band.Top, each => Pair(json, TypedBands.Name(each.Colour), each.P)));
            json.WriteNumber("bands_begin", reading.BandsBegin);
        }

        Texts(json, "networks", reading.Networks);
        json.WriteString("settings", reading.Settings);
        json.WriteString("program", reading.Program);
        if (reading.Says.Count > 0) Texts(json, "says", reading.Says);
    }

    /// <inheritdoc/>
    public override Outcome<ReadingSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = SpotName.Read(reader);
        var pictures = reader.Texts("pictures", 1, MostPictures, LongestName);
        var besides = reader.Texts("besides", 0, MostPictures, LongestName);
        var region = reader.Numbers("region", 5, 5);
        if (region.Count == 5 && (region[2] <= 0 || region[3] <= 0)) reader.Fail("region", "five numbers with width and height above zero");
        var turn = reader.Number("turn_deg", Turns);
        var lines = MarkLines.Read(reader, 0);
        if (lines.Exists(line => !line.IsLattice)) reader.Fail("lines", "lists of places; what a person types is a mark");
        var readings = Readings(reader, lines.Count);
        var outlines = reader.Points("outlines", 0, Corners * MarkLines.Most);
        if (outlines.Count > 0 && outlines.Count != Corners * lines.Count) reader.Fail("outlines", "four corners for each line, or none");
        var inPicture = reader.Wholes("in_picture", 0, Math.Max(0, pictures.Count - 1), 0, MarkLines.Most);
        if (inPicture.Count > 0 && inPicture.Count != lines.Count) reader.Fail("in_picture", "one for each line, or none");
        var also = Also(reader, lines.Count, pictures.Count);
        var otherwise = reader.Texts("otherwise", 0, MarkLines.Most, LongestName);
        var dot = reader.OptionalPoint("dot");
        var dotP = reader.OptionalNumber("dot_p", NumberRange.Share);
        var emblems = reader.Points("emblems", 0, Corners * EmblemFinder.Most);
        var emblemsP = reader.Numbers("emblems_p", 0, EmblemFinder.Most);
        if (emblems.Count != Corners * emblemsP.Count || emblemsP.Any(p => !NumberRange.Share.Holds(p))) reader.Fail("emblems", "four corners for each, and a share in \"emblems_p\"");
        var bands = Bands(reader);
        var begin = reader.OptionalNumber("bands_begin", NumberRange.Positive) ?? 1;
        var networks = reader.Texts("networks", 1, 4, LongestName);
        var (settings, program) = (reader.Text("settings", LongestName), reader.Text("program", LongestName));
        var says = reader.Texts("says", 0, 100);
        return reader.Done(() => new ReadingSighting(
            spot,
            pictures,
            new(new(region[0], region[1]), region[2], region[3], region[4]),
            turn,
            [.. lines.Select((line, i) => new ReadingLine(line, readings[i], [.. outlines.Skip(Corners * i).Take(Corners).Select(each => new PicturePoint(each.X, each.Y))], inPicture.Count > 0 ? (int)inPicture[i] : 0) { Also = also[i] })],
            otherwise,
            dot is { } at ? new PicturePoint(at.X, at.Y) : null,
            networks,
            settings,
            program,
            says)
        {
            Besides = besides,
            DotP = dotP,
            Bands = [.. bands],
            BandsBegin = begin,
            Emblems = [.. emblemsP.Select((p, i) => new ReadingEmblem([.. emblems.Skip(Corners * i).Take(Corners).Select(each => new PicturePoint(each.X, each.Y))], p))],
        });
    }

    private static List<ValueList<LineText>> Readings(PayloadReader reader, int lines)
    {
        const string expected = "for each line its whole readings, each [text, probability]";
        var all = new List<ValueList<LineText>>();
        if (reader.Raw("readings") is not { ValueKind: JsonValueKind.Array } given || given.GetArrayLength() != lines)
        {
            reader.Fail("readings", expected);
            return all;
        }

        foreach (var line in given.EnumerateArray())
        {
            List<LineText?> read = line.ValueKind == JsonValueKind.Array && line.GetArrayLength() is > 0 and <= MostReadings ? [.. line.EnumerateArray().Select(Reading)] : [null];
            if (read.Contains(null))
            {
                reader.Fail("readings", expected);
                return all;
            }

            all.Add([.. read.Select(each => each!.Value)]);
        }

        return all;
    }

    // One list for each line, empty where the key is left out or wrong.
    private static List<ValueList<LineElsewhere>> Also(PayloadReader reader, int lines, int pictures)
    {
        var none = Enumerable.Repeat((ValueList<LineElsewhere>)[], lines).ToList();
        if (!reader.Has("also")) return none;
        List<List<LineElsewhere?>> all = reader.Raw("also") is { ValueKind: JsonValueKind.Array } given ? [.. given.EnumerateArray().Select(line => line.ValueKind == JsonValueKind.Array ? line.EnumerateArray().Select(each => Elsewhere(each, pictures)).ToList() : [null])] : [];
        if (all.Count == lines && all.TrueForAll(line => line.Count < MostPictures && !line.Contains(null))) return [.. all.Select(line => (ValueList<LineElsewhere>)[.. line.Select(each => each!)])];
        reader.Fail("also", "for each line a list of [picture, x, y of four corners], with pictures from 0");
        return none;
    }

    private static LineElsewhere? Elsewhere(JsonElement given, int pictures)
    {
        if (given.ValueKind != JsonValueKind.Array || given.GetArrayLength() != 1 + (2 * Corners)) return null;
        var numbers = new List<double>();
        foreach (var each in given.EnumerateArray())
        {
            if (each.ValueKind != JsonValueKind.Number || !each.TryGetDouble(out var number) || !double.IsFinite(number)) return null;
            numbers.Add(number);
        }

        if (numbers[0] < 0 || numbers[0] >= pictures || numbers[0] != Math.Floor(numbers[0])) return null;
        return new((int)numbers[0], [.. Enumerable.Range(0, Corners).Select(i => new PicturePoint(numbers[1 + (2 * i)], numbers[2 + (2 * i)]))]);
    }

    private static List<ReadingBand> Bands(PayloadReader reader)
    {
        if (!reader.Has("bands")) return [];
        var bands = reader.Raw("bands") is { ValueKind: JsonValueKind.Array } given && given.GetArrayLength() is > 0 and <= BandOdds.Most ? given.EnumerateArray().Select(Band).ToList() : [null];
        if (!bands.Contains(null)) return bands.ConvertAll(band => band!);
        reader.Fail("bands", "one to six bands, each a list of [colour, probability], together one at most");
        return [];
    }

    private static ReadingBand? Band(JsonElement given)
    {
        if (given.ValueKind != JsonValueKind.Array || given.GetArrayLength() is 0 or > 20) return null;
        var top = new List<(BandColour Colour, double P)>();
        foreach (var pair in given.EnumerateArray())
        {
            if (Reading(pair) is not { } read || TypedBands.ColourOf(read.Text) is not { } colour || top.Exists(each => each.Colour == colour)) return null;
            top.Add((colour, read.P));
        }

        // Rounded ones may add up to a little more.
        return top.Sum(each => each.P) is > 0 and <= 1.01 ? new([.. top]) : null;
    }

    private static LineText? Reading(JsonElement pair) =>
        pair.ValueKind == JsonValueKind.Array && pair.GetArrayLength() == 2 && pair[0].ValueKind == JsonValueKind.String && MarkLines.SafeText(pair[0]) is { Length: > 0 and <= LongestName } text
        && pair[1].ValueKind == JsonValueKind.Number && pair[1].TryGetDouble(out var p) && NumberRange.Share.Holds(p) ? new LineText(text, p) : null;

    private static void Texts(Utf8JsonWriter json, string key, IReadOnlyList<string> texts) => List(json, key, texts, json.WriteStringValue);

    private static void List<T>(Utf8JsonWriter json, string? key, IReadOnlyList<T> items, Action<T> write)
    {
        if (key is not null) json.WritePropertyName(key);
        json.WriteStartArray();
        foreach (var item in items) write(item);
        json.WriteEndArray();
    }

    private static void Pair(Utf8JsonWriter json, string text, double p)
    {
        json.WriteStartArray();
        json.WriteStringValue(text);
        json.WriteNumberValue(p);
        json.WriteEndArray();
    }

    private static void Point(Utf8JsonWriter json, PicturePoint point)
    {
        json.WriteStartArray();
        json.WriteNumberValue(point.X);
        json.WriteNumberValue(point.Y);
        json.WriteEndArray();
    }
}
