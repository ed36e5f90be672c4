using System.CommandLine;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Store;

namespace Lidoff.Commands;

/// <summary><c>lidoff entries DOSSIER --json</c>: every entry in fold order.</summary>
public sealed class EntriesCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Lists every entry of a dossier in fold order, also those that were taken back.";

    /// <inheritdoc/>
    public string Example => "entries band --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string>("DOSSIER") { Description = "Short name of the dossier." };
        var json = new Option<bool>("--json") { Description = "One JSON object an entry on standard output." };
        command.Arguments.Add(dossier);
        command.Options.Add(json);
        command.SetAction(parsed => Desk.Within(seat, parsed, parsed.GetValue(dossier)!, (_, session) =>
        {
            foreach (var fault in session.Damaged) seat.Talk.Say(fault.Say);
            foreach (var folded in session.View.Entries) Tell(seat, folded, parsed.GetValue(json));
            return session.Damaged.Count > 0 ? ExitCodes.Look : ExitCodes.Done;
        }));
    }

    private static void Tell(Seat seat, FoldedEntry folded, bool json)
    {
        var entry = folded.Entry;
        if (!json)
        {
            var fate = folded.Fate == EntryFate.Live ? "" : "  (" + folded.Fate.ToString().ToLowerInvariant() + ")";
            seat.Talk.Line($"{entry.Id.Hex[..12]} {entry.Kind}{fate}");
            return;
        }

        seat.Talk.Json(writer =>
        {
            writer.WriteString("id", entry.Id.Hex);
            writer.WriteString("kind", entry.Kind);
            writer.WriteString("chain", entry.Chain);
            writer.WriteNumber("seq", entry.Seq);
            writer.WriteStartArray("targets");
            foreach (var target in entry.Targets) writer.WriteStringValue(target.Hex);
            writer.WriteEndArray();
        });
    }
}
