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
        return EachPicture.Run<PartsRead>(
            seat, images, json, (path, image, header) => PartReader.Open(path, image, header).Then<PartsRead>(grey => reader.Read(grey, header, (_, _) => { }, stop)), found => found.Says,
            found => { foreach (var part in found.Parts) Show(seat, part); }, Write, stop);
    }

    private static void Show(Seat seat, FoundPart part)
    {
        seat.Talk.Line(CommandSentences.PartAt(part));
        foreach (var line in part.Read.Lines) seat.Talk.Line("  " + CommandSentences.Read(line.Reading.Text, line.Reading.Readings));
        if (ReadingSentences.Turned(part.Read.TurnDeg) is { Length: > 0 } turned) seat.Talk.Line("  " + turned);
    }

    private static void Write(Utf8JsonWriter writer, PartsRead found)
    {
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
