using System.CommandLine;
using Lidoff.Evidence.Store;

namespace Lidoff.Commands;

/// <summary><c>lidoff new DOSSIER</c>: begins a dossier.</summary>
public sealed class NewCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Begins a dossier: all about one product under study.";

    /// <inheritdoc/>
    public string Example => "new band";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string>("DOSSIER") { Description = "Short name: a-z, 0-9, - and _." };
        var title = new Option<string>("--title") { Description = "The dossier's name in words.", DefaultValueFactory = _ => "" };
        command.Arguments.Add(dossier);
        command.Options.Add(title);
        command.SetAction(parsed =>
        {
            var opened = Desk.Open(seat, parsed);
            if (!opened.TryValue(out var workspace)) return Desk.Refuse(seat, opened.Faults);
            using (workspace)
            {
                var begun = DossierSession.Begin(workspace, parsed.GetValue(dossier)!, parsed.GetValue(title)!);
                if (!begun.TryValue(out var entries)) return Desk.Refuse(seat, begun.Faults);
                seat.Talk.Json(json =>
                {
                    json.WriteString("id", entries[0].Id.Hex);
                    json.WriteString("kind", entries[0].Entry.Kind);
                    json.WriteString("dossier", entries[0].Entry.Dossier);
                });
                return ExitCodes.Done;
            }
        });
    }
}
