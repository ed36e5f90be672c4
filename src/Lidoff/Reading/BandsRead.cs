using System.Text.Json;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed.Codes;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Bands;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Talking;

namespace Lidoff.Reading;

/// <summary>Reads colour bands of parts in picture files for <c>lidoff read --bands</c>; nothing is stored.</summary>
internal static class BandsRead
{
    public static int Run(Seat seat, string[] images, PictureRegion? box, bool json, CancellationToken stop) =>
        EachPicture.Run(seat, images, json, (path, image, header) => BandReader.Read(path, image, header, box), _ => [], seen => Show(seat, seen), Write, stop);

    private static void Show(Seat seat, SeenBands seen)
    {
        var named = string.Join(' ', seen.Bands.Select(band => TypedBands.Name(band.Colours.Likeliest)));
        seat.Talk.Line(named);
        foreach (var each in EachPicture.WorthShowing(seen.Odds.Readings, each => each.P)) seat.Talk.Line("  " + CommandSentences.Value(string.Join(' ', each.Colours.Select(TypedBands.Name)), each.Reading.ToString(), "", each.P));
        if (seen.Odds.Readings.Count == 0) seat.Talk.Line("  " + CommandSentences.NoBandValue);
    }

    private static void Write(Utf8JsonWriter json, SeenBands seen)
    {
        json.WriteStartArray("body");
        foreach (var corner in seen.Body.Corners) ReadWriter.Write(json, corner);
        json.WriteEndArray();
        json.WriteStartArray("bands");
        foreach (var (outline, colours) in seen.Bands)
        {
            json.WriteStartObject();
            json.WriteStartArray("outline");
            foreach (var corner in outline.Corners) ReadWriter.Write(json, corner);
            json.WriteEndArray();
            json.WriteStartArray("top");
            foreach (var colour in BandTable.All.Where(colour => colours[colour] >= 0.001).OrderByDescending(colour => colours[colour]))
            {
                json.WriteStartArray();
                json.WriteStringValue(TypedBands.Name(colour));
                json.WriteNumberValue(Math.Round(colours[colour], 4));
                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        CodeWriter.WriteKeys(json, seen.Odds);
    }
}
