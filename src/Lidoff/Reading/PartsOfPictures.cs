using System.Text.Json;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Reading.Parts;
using Lidoff.Talking;

namespace Lidoff.Reading;

/// <summary>Finds and reads the parts of whole boards for <c>lidoff read --parts</c>; nothing is stored.</summary>
internal static class PartsOfPictures
{
    public static int Run(Seat seat, string[] images, bool json, IReadingNetworks networks, CancellationToken stop)
    {
        if (networks.Troubles.Count > 0) return Desk.Refuse(seat, networks.Troubles);
        var reader = new PartReader(networks);
        var refused = 0;
        foreach (var image in images)
        {
            var path = seat.PathOf(image);
            var read = PictureFile.Read(path, image).Then<PartsRead>(header => PartReader.Open(path, image, header).Then<PartsRead>(grey => reader.Read(grey, header, (_, _) => { }, stop)));
            if (!read.TryValue(out var found))
            {
                refused++;
                if (json) seat.Talk.JsonFault(image, read.Faults);
                seat.Talk.SayFaults(read.Faults);
                continue;
            }

            foreach (var says in found.Says) seat.Talk.Say($"{image}: {says}");
            if (json) seat.Talk.Json(writer => Write(writer, image, found));
            else foreach (var part in found.Parts) Show(seat, part);
        }

        return refused == 0 ? ExitCodes.Done : refused == images.Length ? ExitCodes.Refused : ExitCodes.Look;
    }

    private static void Show(Seat seat, FoundPart part)
    {
        seat.Talk.Line(CommandSentences.PartAt(part));
        foreach (var line in part.Read.Lines) seat.Talk.Line("  " + CommandSentences.Read(line.Reading.Text, line.Reading.Readings));
        if (ReadingSentences.Turned(part.Read.TurnDeg) is { Length: > 0 } turned) seat.Talk.Line("  " + turned);
    }

    private static void Write(Utf8JsonWriter writer, string image, PartsRead found)
    {
        writer.WriteString("image", image);
        writer.WriteStartArray("parts");
        foreach (var part in found.Parts)
        {
            writer.WriteStartObject();
            ReadWriter.Write(writer, part.Region);
            writer.WriteBoolean("body", part.HasBody);
            ReadWriter.Write(writer, part.Read);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }
}
