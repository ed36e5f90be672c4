using System.Text.Json;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Reading.Engine;

/// <summary>Writes what was read as docs/contracts.md lays it down: keys in fixed order, a machine's numbers rounded.</summary>
public static class ReadWriter
{
    /// <summary>Decimals of a probability: beyond them a network's digits are its own.</summary>
    internal const int Digits = 4;

    // As many whole readings as people are shown.
    private const int MostReadings = 5;

    /// <summary>Writes <c>"turn_deg"</c> and <c>"lines"</c> into the object that the caller has begun, and <c>"dot"</c> and <c>"emblems"</c> where there are some.</summary>
    public static void Write(Utf8JsonWriter json, ReadMark read)
    {
        Guard.NotNull(json);
        json.WriteNumber("turn_deg", Guard.NotNull(read).TurnDeg);
        json.WriteStartArray("lines");
        foreach (var line in read.Lines) Write(json, line);
        json.WriteEndArray();
        if (read.PinOne is { } dot)
        {
            json.WriteStartObject("dot");
            json.WritePropertyName("at");
            Write(json, dot.At);
            json.WriteNumber("p", Share(dot.P));
            json.WriteString("corner", dot.Corner);
            json.WriteNumber("corner_p", Share(dot.CornerP));
            json.WriteEndObject();
        }

        if (read.Emblems.Count == 0) return;
        json.WriteStartArray("emblems");
        foreach (var emblem in read.Emblems)
        {
            json.WriteStartObject();
            json.WriteStartArray("outline");
            foreach (var corner in emblem.Outline.Corners) Write(json, corner);
            json.WriteEndArray();
            json.WriteNumber("p", Share(emblem.P));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes <c>"region"</c>: middle, width, height, px, and turn, radians clockwise.</summary>
    public static void Write(Utf8JsonWriter json, PictureRegion region)
    {
        Guard.NotNull(json).WriteStartArray("region");
        foreach (var number in new[] { Px(region.Middle.X), Px(region.Middle.Y), Px(region.Width), Px(region.Height), Math.Round(region.Turn, Digits) }) json.WriteNumberValue(number);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, ReadLine line)
    {
        json.WriteStartObject();
        json.WriteString("text", line.Reading.Text);
        json.WriteNumber("p", Share(line.Reading.P));
        json.WriteStartArray("outline");
        foreach (var corner in line.Outline) Write(json, corner);
        json.WriteEndArray();
        json.WriteStartArray("readings");
        foreach (var (text, p) in line.Reading.Readings.Take(MostReadings))
        {
            json.WriteStartArray();
            json.WriteStringValue(text);
            json.WriteNumberValue(Share(p));
            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteStartArray("glyphs");
        // One for each character of the text; a place where one more may stand is none of them.
        foreach (var place in line.Reading.Places.Where(place => place.Character.Length > 0)) Write(json, place, line.At(place));
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ReadPlace place, PicturePoint at)
    {
        json.WriteStartObject();
        json.WritePropertyName("at");
        Write(json, at);
        json.WriteStartArray("top");
        foreach (var (symbol, p) in place.Top)
        {
            json.WriteStartArray();
            json.WriteStringValue(symbol);
            json.WriteNumberValue(Share(p));
            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteNumber("rest", Share(place.Rest));
        json.WriteEndObject();
    }

    /// <summary>Writes a place as a list of x and y, rounded to a tenth of a px.</summary>
    public static void Write(Utf8JsonWriter json, PicturePoint point)
    {
        json.WriteStartArray();
        json.WriteNumberValue(Px(point.X));
        json.WriteNumberValue(Px(point.Y));
        json.WriteEndArray();
    }

    /// <summary>A probability, rounded.</summary>
    internal static double Share(double p) => Math.Round(p, Digits);

    /// <summary>A place in px, rounded to a tenth; never minus zero.</summary>
    internal static double Px(double px) => Math.Round(px, 1) + 0.0;
}
