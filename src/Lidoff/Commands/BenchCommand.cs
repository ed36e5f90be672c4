using System.CommandLine;
using System.Globalization;
using Lidoff.Serving;

namespace Lidoff.Commands;

/// <summary><c>lidoff bench [--port N] [--no-browser] [--watch DIR --into DOSSIER]</c>: the workbench on 127.0.0.1.</summary>
public sealed class BenchCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Opens the workbench in the browser. It listens on this machine alone.";

    /// <inheritdoc/>
    public string Example => "bench --port 0 --no-browser";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var (port, quiet) = (PortOption(), NoBrowserOption());
        command.Options.Add(port);
        command.Options.Add(quiet);
        var watch = new Option<string?>("--watch") { Description = "Folder that a microscope or camera writes to; what lands there is taken in." };
        var into = new Option<string?>("--into") { Description = "Short name of the dossier that files of --watch go into." };
        command.Options.Add(watch);
        command.Options.Add(into);
        command.Validators.Add(result =>
        {
            if (WrongCall.LacksValue(result)) return;
            if (result.GetValue(watch) is null != result.GetValue(into) is null) result.AddError("--watch and --into go together: the folder, and the dossier its files go into.");
        });
        command.SetAction(async (parsed, stop) =>
        {
            var opened = Desk.Open(seat, parsed);
            if (!opened.TryValue(out var workspace)) return Desk.Refuse(seat, opened.Faults);
            (string, string)? watched = parsed.GetValue(watch) is { } folder && parsed.GetValue(into) is { } dossier ? (seat.PathOf(folder), dossier) : null;
            using (workspace) return await BenchRun.Serve(seat, workspace, parsed.GetValue(port), !parsed.GetValue(quiet), "/", stop, watched);
        });
    }

    /// <summary><c>--port</c>, shared with <c>demo</c>.</summary>
    internal static Option<int?> PortOption()
    {
        var port = new Option<int?>("--port") { Description = "Port on 127.0.0.1; 0 takes a free one. Without it the usual one, or a free one where that is taken." };
        port.Validators.Add(result =>
        {
            // By its text: asking for a number that is none would throw, and the parser says so itself.
            if (result.Tokens is [var token] && int.TryParse(token.Value, NumberStyles.Integer, CultureInfo.InvariantCulture, out var number) && number is < 0 or > 65535) result.AddError("--port wants a number from 0 to 65535.");
        });
        return port;
    }

    /// <summary><c>--no-browser</c>, shared with <c>demo</c>.</summary>
    internal static Option<bool> NoBrowserOption() => new("--no-browser") { Description = "Does not start a browser." };
}
