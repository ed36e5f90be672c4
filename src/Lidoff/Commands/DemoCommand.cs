using System.CommandLine;
using Lidoff.Demo;
using Lidoff.Serving;

namespace Lidoff.Commands;

/// <summary><c>lidoff demo [--port N] [--no-browser]</c>: lays out the demo dossier and opens the workbench on it.</summary>
public sealed class DemoCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Lays out the demo (an invented device, invented data) and opens the workbench on it.";

    /// <inheritdoc/>
    public string Example => "demo --workspace /tmp/brindle";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var (port, quiet) = (BenchCommand.PortOption(), BenchCommand.NoBrowserOption());
        command.Options.Add(port);
        command.Options.Add(quiet);
        command.SetAction(async (parsed, stop) =>
        {
            // A workspace of its own unless one is named: the demo must never stand among somebody's dossiers.
            var folder = parsed.GetValue(seat.WorkspaceOption) is null ? seat.DefaultWorkspace + "-demo" : seat.WorkspaceFolder(parsed);
            var opened = Desk.OpenFolder(seat, folder);
            if (!opened.TryValue(out var workspace)) return Desk.Refuse(seat, opened.Faults);
            using (workspace)
            {
                var laid = DemoDossier.LayOut(seat, workspace);
                if (!laid.Ok) return Desk.Refuse(seat, laid.Faults);
                return await BenchRun.Serve(seat, workspace, parsed.GetValue(port), !parsed.GetValue(quiet), "/dossiers/" + DemoDossier.Name, stop);
            }
        });
    }
}
