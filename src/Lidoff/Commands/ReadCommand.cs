using System.CommandLine;
using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading;
using Lidoff.Seeing.Reading.Engine;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff read IMAGE… [--box x,y,w,h] [--upright] [--json]</c>: marks in pictures or crops.</summary>
public sealed class ReadCommand : ILidoffCommand
{
    private const double WorthTelling = 10;

    /// <inheritdoc/>
    public string Says => "Reads marks in pictures: each line with how probable it is, and place by place what else may stand there.";

    /// <inheritdoc/>
    public string Example => "read chip.jpg --box 120,80,300,200 --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var images = new Argument<string[]>("IMAGE") { Description = "Pictures, whole or cut out.", Arity = ArgumentArity.OneOrMore };
        var box = new Option<string?>("--box") { Description = "Part of the picture to read: left, top, width and height in px.", HelpName = "x,y,w,h" };
        var upright = new Option<bool>("--upright") { Description = "The text runs to the right: do not look for a turn." };
        var json = new Option<bool>("--json") { Description = "One JSON object a picture on standard output." };
        command.Arguments.Add(images);
        command.Options.Add(box);
        command.Options.Add(upright);
        command.Options.Add(json);
        command.SetAction((parsed, stop) => Task.FromResult(Run(seat, parsed.GetValue(images)!, parsed.GetValue(box), parsed.GetValue(upright), parsed.GetValue(json), stop)));
    }

    private static int Run(Seat seat, string[] images, string? box, bool upright, bool json, CancellationToken stop)
    {
        var region = box is null ? (Outcome<PictureRegion?>)(PictureRegion?)null : Box(box);
        if (!region.Ok)
        {
            seat.Talk.SayFaults(region.Faults);
            return ExitCodes.Usage;
        }

        using var networks = new OnnxNetworks(OnnxNetworks.FolderOf(seat.ProgramFolder));
        if (networks.Troubles.Count > 0) return Desk.Refuse(seat, networks.Troubles);
        var reading = new PictureReading(networks);
        var refused = 0;
        foreach (var image in images)
        {
            stop.ThrowIfCancellationRequested();
            var read = PictureFile.Read(seat.PathOf(image), image).Then<ReadMark>(header =>
            {
                foreach (var remark in header.Remarks) seat.Talk.Say(remark);
                return reading.Read(seat.PathOf(image), image, header, region.Value, upright);
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
        foreach (var line in mark.Lines) seat.Talk.Line(CommandSentences.Read(line));
        // A few degrees are how a picture is taken; more is how the part lies.
        if (mark.Lines.Count > 0 && Math.Abs(Math.IEEERemainder(mark.TurnDeg, 360)) > WorthTelling) seat.Talk.Line("  " + ReadingSentences.Turned(mark.TurnDeg));
    }

    private static void Write(System.Text.Json.Utf8JsonWriter writer, string image, ReadMark mark)
    {
        writer.WriteString("image", image);
        ReadWriter.Write(writer, mark);
    }

    private static Outcome<PictureRegion?> Box(string text)
    {
        var parts = text.Split(',');
        var numbers = new double[4];
        var good = parts.Length == 4;
        for (var i = 0; good && i < 4; i++) good = double.TryParse(parts[i].Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i]) && double.IsFinite(numbers[i]);
        return good && numbers[2] > 0 && numbers[3] > 0 ? (PictureRegion?)PictureRegion.Box(numbers[0], numbers[1], numbers[2], numbers[3]) : ReadingSentences.NoBox(text);
    }
}
