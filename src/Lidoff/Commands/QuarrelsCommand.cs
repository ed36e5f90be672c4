using System.CommandLine;
using System.Globalization;
using System.Text.Json;
using Lidoff.Weighing.Quarrels;

namespace Lidoff.Commands;

/// <summary><c>lidoff quarrels DOSSIER --json</c>: what cannot all be true, and what would settle it.</summary>
public sealed class QuarrelsCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Lists the entries that cannot all be true, what could be wrong, and what would settle it.";

    /// <inheritdoc/>
    public string Example => "quarrels band --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string>("DOSSIER") { Description = "Short name of the dossier." };
        var json = new Option<bool>("--json") { Description = "One JSON object a quarrel on standard output." };
        command.Arguments.Add(dossier);
        command.Options.Add(json);
        command.SetAction(parsed => Desk.Within(seat, parsed, workspace =>
        {
            var open = Desk.Dossier(seat, workspace, parsed.GetValue(dossier)!);
            if (!open.Ok) return Desk.Refuse(seat, open.Faults);
            var quarrels = QuarrelBook.Find(open.Value.Session.View, open.Value.Model);
            for (var i = 0; i < quarrels.Count; i++) Tell(seat, "Q" + (i + 1).ToString(CultureInfo.InvariantCulture), quarrels[i], parsed.GetValue(json));
            return quarrels.Count == 0 ? ExitCodes.Done : ExitCodes.Look;
        }));
    }

    private static void Tell(Seat seat, string name, Quarrel quarrel, bool json)
    {
        if (json) seat.Talk.Json(writer => Write(writer, name, quarrel));
        else seat.Talk.Line($"{name} ({quarrel.Rule}) {quarrel.Say} To settle it: {quarrel.Settle}.");
    }

    private static void Write(Utf8JsonWriter writer, string name, Quarrel quarrel)
    {
        writer.WriteString("quarrel", name);
        writer.WriteString("rule", quarrel.Rule);
        writer.WriteStartArray("members");
        foreach (var id in quarrel.Members) writer.WriteStringValue(id.Hex);
        writer.WriteEndArray();
        writer.WriteString("say", quarrel.Say);
        writer.WriteStartArray("diagnoses");
        foreach (var diagnosis in quarrel.Diagnoses)
        {
            writer.WriteStartObject();
            writer.WriteStartArray("drop");
            foreach (var id in diagnosis.Drop) writer.WriteStringValue(id.Hex);
            writer.WriteEndArray();
            writer.WriteNumber("p", diagnosis.P);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
        writer.WriteStartObject("settle");
        writer.WriteString("measure", quarrel.Settle);
        writer.WriteNumber("minutes", quarrel.Minutes);
        writer.WriteEndObject();
    }
}
