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
    public static int Run(Seat seat, string[] images, PictureRegion? region, bool upright, bool json, IReadingNetworks networks, CancellationToken stop)
    {
        if (networks.Troubles.Count > 0) return Desk.Refuse(seat, networks.Troubles);
        var reading = new PictureReading(networks);
        return EachPicture.Run(seat, images, json, (path, image, header) => reading.Read(path, image, header, region, upright), mark => mark.Says, mark => Show(seat, mark), Write, stop);
    }

    private static void Show(Seat seat, ReadMark mark)
    {
        foreach (var line in mark.Lines) seat.Talk.Line(CommandSentences.Read(line.Reading.Text, line.Reading.Readings));
        if (ReadValue.Of(mark) is { } odds) foreach (var code in EachPicture.WorthShowing(odds.Readings, each => each.P)) seat.Talk.Line("  " + CommandSentences.ReadAsValue(code.Reading.ToString(), code.OnHead ? CommandSentences.OnHead(code.As) : "", code.P));
        if (mark.PinOne is { } dot) seat.Talk.Line("  " + dot.Says);
        foreach (var emblem in mark.Emblems) seat.Talk.Line("  " + ReadingSentences.Emblem(emblem.Outline));
        if (mark.Lines.Count > 0 && ReadingSentences.Turned(mark.TurnDeg) is { Length: > 0 } turned) seat.Talk.Line("  " + turned);
    }

    private static void Write(Utf8JsonWriter writer, ReadMark mark)
    {
        ReadWriter.Write(writer, mark);
        if (ReadValue.Of(mark) is not { } odds) return;
        writer.WriteStartObject("value");
        CodeWriter.WriteKeys(writer, odds);
        writer.WriteEndObject();
    }
}
