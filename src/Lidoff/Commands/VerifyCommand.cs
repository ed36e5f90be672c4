using System.CommandLine;
using Lidoff.Evidence.Store;
using Lidoff.Numbers.Failing;

namespace Lidoff.Commands;

/// <summary><c>lidoff verify PATH --json</c>: proves that nothing changed.</summary>
public sealed class VerifyCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Proves that nothing in a workspace changed: entries, chains, contents and files against their hashes.";

    /// <inheritdoc/>
    public string Example => "verify ~/.local/share/lidoff --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var path = new Argument<string?>("PATH") { Description = "Folder of the workspace; left out, the one commands use.", Arity = ArgumentArity.ZeroOrOne };
        var json = new Option<bool>("--json") { Description = "One JSON object on standard output." };
        command.Arguments.Add(path);
        command.Options.Add(json);
        command.SetAction((parsed, stop) => Task.FromResult(Run(seat, parsed.GetValue(path) is { } given ? seat.PathOf(given) : seat.WorkspaceFolder(parsed), parsed.GetValue(json), stop)));
    }

    private static int Run(Seat seat, string folder, bool json, CancellationToken stop)
    {
        if (!Workspace.IsThere(folder)) return Desk.Refuse(seat, [StoreSentences.NoWorkspace(folder)]);
        var opened = Desk.OpenFolder(seat, folder);
        if (!opened.TryValue(out var workspace)) return Desk.Refuse(seat, opened.Faults);
        using (workspace)
        {
            var verified = Verifier.Run(workspace, stop: stop);
            if (!verified.TryValue(out var found)) return Desk.Refuse(seat, verified.Faults);
            if (json) seat.Talk.Json(writer => Write(writer, found));
            else seat.Talk.Line($"{(found.Ok ? "Whole" : "NOT whole")}: {found.Entries} entries, {found.Files} files, {found.Erased} contents erased by right, {found.Faults.Count} faults.");
            foreach (var fault in found.Faults) seat.Talk.Say(fault.Say);
            return found.Ok ? ExitCodes.Done : ExitCodes.Look;
        }
    }

    private static void Write(System.Text.Json.Utf8JsonWriter writer, Verification found)
    {
        writer.WriteBoolean("ok", found.Ok);
        writer.WriteNumber("entries", found.Entries);
        writer.WriteNumber("files", found.Files);
        writer.WriteNumber("erased", found.Erased);
        writer.WriteStartArray("faults");
        foreach (var fault in found.Faults)
        {
            writer.WriteStartObject();
            writer.WriteString("path", fault.Where);
            writer.WriteString("say", fault.Say);
            writer.WriteEndObject();
        }

        writer.WriteEndArray();
    }
}
