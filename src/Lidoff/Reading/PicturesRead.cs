using System.Text.Json;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed.Codes;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Talking;

namespace Lidoff.Reading;

/// <summary>Reads picture files for <c>lidoff read</c>; nothing is stored.</summary>
internal static class PicturesRead
{
    // What people are shown of value codes; JSON holds all.
    private const double WorthALine = 0.001;
    private const int MostValues = 5;

    public static int Run(Seat seat, string[] images, PictureRegion? region, bool upright, bool json, IReadingNetworks networks, CancellationToken stop)
    {
        if (networks.Troubles.Count > 0) return Desk.Refuse(seat, networks.Troubles);
        var reading = new PictureReading(networks);
        var refused = 0;
        foreach (var image in images)
        {
            stop.ThrowIfCancellationRequested();
            var read = PictureFile.Read(seat.PathOf(image), image).Then<ReadMark>(header =>
            {
                foreach (var remark in header.Remarks) seat.Talk.Say(remark);
                return reading.Read(seat.PathOf(image), image, header, region, upright);
            });
            if (!read.TryValue(out var mark))
            {
                refused++;
                if (json) seat.Talk.JsonFault(image, read.Faults);
                seat.Talk.SayFaults(read.Faults);
                continue;
            }

            foreach (var says in mark.Says) seat.Talk.Say($"{image}: {says}");
            if (json) seat.Talk.Json(writer => Write(writer, image, mark));
            else Show(seat, mark);
        }

        return refused == 0 ? ExitCodes.Done : refused == images.Length ? ExitCodes.Refused : ExitCodes.Look;
    }

    private static void Show(Seat seat, ReadMark mark)
    {
        foreach (var line in mark.Lines) seat.Talk.Line(CommandSentences.Read(line.Reading.Text, line.Reading.Readings));
        if (ReadValue.Of(mark) is { } odds) foreach (var code in odds.Readings.Where(each => each.P >= WorthALine).Take(MostValues)) seat.Talk.Line("  " + CommandSentences.ReadAsValue(code.Reading.ToString(), code.OnHead ? CommandSentences.OnHead(code.As) : "", code.P));
        if (mark.PinOne is { } dot) seat.Talk.Line("  " + dot.Says);
        foreach (var emblem in mark.Emblems) seat.Talk.Line("  " + ReadingSentences.Emblem(emblem.Outline));
        if (mark.Lines.Count > 0 && ReadingSentences.Turned(mark.TurnDeg) is { Length: > 0 } turned) seat.Talk.Line("  " + turned);
    }

    private static void Write(Utf8JsonWriter writer, string image, ReadMark mark)
    {
        writer.WriteString("image", image);
        ReadWriter.Write(writer, mark);
        if (ReadValue.Of(mark) is not { } odds) return;
        writer.WriteStartObject("value");
        CodeWriter.WriteKeys(writer, odds);
        writer.WriteEndObject();
    }
}
