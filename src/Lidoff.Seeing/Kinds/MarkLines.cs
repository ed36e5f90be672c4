using System.Globalization;
using System.Text.Json;
using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>Reads the lines of a mark, typed or as lattices.</summary>
internal static class MarkLines
{
    /// <summary>Most lines of one mark.</summary>
    public const int Most = 20;

    private const int LongestLine = 200;

    // Rounded probabilities may add up to a little more than one.
    private const double MostTogether = 1.001;

    /// <summary>The lines under <c>lines</c>; faults go to the reader.</summary>
    public static List<MarkLine> Read(PayloadReader reader, int least = 1)
    {
        var lines = new List<MarkLine>();
        if (reader.Raw("lines") is not { ValueKind: JsonValueKind.Array } given || given.GetArrayLength() < least || given.GetArrayLength() > Most)
        {
            reader.Fail("lines", string.Create(CultureInfo.InvariantCulture, $"a list of {least} to {Most} lines"));
            return lines;
        }

        var at = 0;
        foreach (var line in given.EnumerateArray())
        {
            var place = string.Create(CultureInfo.InvariantCulture, $"lines[{at++}]");
            if (line.ValueKind == JsonValueKind.String) Typed(reader, place, line, lines);
            else if (line.ValueKind == JsonValueKind.Array) Lattice(reader, place, line, lines);
            else reader.Fail(place, "a text or a list of places");
        }

        return lines;
    }

    /// <summary>A line as a lattice, its text being what is likelier than not at each place.</summary>
    public static MarkLine OfPlaces(ValueList<MarkPlace> places) => new(string.Concat(places.Select(Likeliest)), places);

    private static void Typed(PayloadReader reader, string place, JsonElement line, List<MarkLine> lines)
    {
        var text = SafeText(line);
        if (string.IsNullOrWhiteSpace(text) || text.Length > LongestLine)
        {
            reader.Fail(place, string.Create(CultureInfo.InvariantCulture, $"a text of 1 to {LongestLine} characters"));
            return;
        }

        lines.Add(new(text, []));
    }

    private static void Lattice(PayloadReader reader, string place, JsonElement line, List<MarkLine> lines)
    {
        var places = new List<MarkPlace>();
        if (line.GetArrayLength() is 0 or > LongestLine) reader.Fail(place, string.Create(CultureInfo.InvariantCulture, $"1 to {LongestLine} places"));
        foreach (var position in line.EnumerateArray())
        {
            if (Place(position) is { } read)
            {
                places.Add(read);
                continue;
            }

            reader.Fail(
                string.Create(CultureInfo.InvariantCulture, $"{place}[{places.Count}]"),
                "a list of [character, probability] with probabilities from 0 to 1 that do not exceed 1 together");
            return;
        }

        lines.Add(OfPlaces(places.ToValueList()));
    }

    private static MarkPlace? Place(JsonElement position)
    {
        if (position.ValueKind != JsonValueKind.Array) return null;
        var glyphs = new List<MarkGlyph>();
        foreach (var pair in position.EnumerateArray())
        {
            if (pair.ValueKind != JsonValueKind.Array || pair.GetArrayLength() != 2 || pair[0].ValueKind != JsonValueKind.String) return null;
            if (pair[1].ValueKind != JsonValueKind.Number || !pair[1].TryGetDouble(out var p) || !NumberRange.Share.Holds(p)) return null;
            var character = SafeText(pair[0]);
            // The empty text is an answer too: a reader may not know whether anything is printed there.
            if (character is null || new StringInfo(character).LengthInTextElements > 1) return null;
            glyphs.Add(new(character, p));
        }

        return glyphs.Sum(glyph => glyph.P) <= MostTogether ? new(glyphs.ToValueList()) : null;
    }

    // Below one half the likeliest character is still a guess; a guess is not dressed up as a reading.
    private static string Likeliest(MarkPlace place) =>
        place.Top.Count > 0 && place.Top.MaxBy(glyph => glyph.P) is { P: >= 0.5 } best && (best.Character.Length > 0 || best.P > 0.5) ? best.Character : "?";

    /// <summary>A text; null where it is half of one.</summary>
    public static string? SafeText(JsonElement text)
    {
        try
        {
            return text.GetString();
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair written as an escape is valid JSON and no text.
            return null;
        }
    }
}
