using System.CommandLine;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Store;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff note DOSSIER FILE.jsonl [--json]</c>: sightings and decisions, a line each.</summary>
public sealed class NoteCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Notes sightings and decisions, one JSON object a line; supersede, undo and erase too.";

    /// <inheritdoc/>
    public string Example => "note band seen.jsonl --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string?>("DOSSIER") { Description = "Short name of the dossier.", Arity = ArgumentArity.ZeroOrOne };
        var file = new Argument<string?>("FILE") { Description = "JSON lines; - reads standard input.", Arity = ArgumentArity.ZeroOrOne };
        var by = new Option<string>("--by") { Description = "Who stands behind lines that name nobody.", DefaultValueFactory = _ => "" };
        var kinds = new Option<bool>("--list-kinds") { Description = "Lists the kinds with their keys." };
        var json = new Option<bool>("--json") { Description = "One JSON object a line on standard output." };
        command.Arguments.Add(dossier);
        command.Arguments.Add(file);
        command.Options.Add(by);
        command.Options.Add(kinds);
        command.Options.Add(json);
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(kinds)) return List(seat, parsed.GetValue(json));
            if (parsed.GetValue(dossier) is { } name && parsed.GetValue(file) is { } path) return Run(seat, parsed, name, path, parsed.GetValue(by)!, parsed.GetValue(json));
            seat.Talk.Say("lidoff note wants a dossier and a file; `lidoff note --help` shows how it is called.");
            return ExitCodes.Usage;
        });
    }

    private static int Run(Seat seat, ParseResult parsed, string dossier, string path, string by, bool json)
    {
        var opened = Desk.OpenExisting(seat, parsed);
        if (!opened.TryValue(out var workspace)) return Desk.Refuse(seat, opened.Faults);
        using (workspace)
        {
            var session = DossierSession.Open(workspace, dossier, Desk.Kinds);
            if (!session.Ok) return Desk.Refuse(seat, session.Faults);
            var input = InputFiles.Lines(seat, path);
            if (!input.Ok) return Desk.Refuse(seat, input.Faults);
            var batch = new NoteReader(Desk.Kinds, prefix => workspace.Store.Find(dossier, prefix)).Read(dossier, input.Value, by);
            var stored = batch.Drafts.Count == 0 ? (IReadOnlyList<StoredEntry>)[] : null;
            if (stored is null)
            {
                var appended = session.Value.Append(batch.Drafts);
                if (!appended.TryValue(out stored)) return Desk.Refuse(seat, appended.Faults);
                if (stored.Any(entry => entry.Entry.Kind == ControlKinds.Erase)) seat.Talk.SayFaults(workspace.RemoveErasedFiles().Faults);
            }

            return Tell(seat, batch, stored, json);
        }
    }

    private static int Tell(Seat seat, NoteBatch batch, IReadOnlyList<StoredEntry> stored, bool json)
    {
        var refused = 0;
        foreach (var line in batch.Lines)
        {
            foreach (var remark in line.Remarks) seat.Talk.Say(remark);
            if (line.Draft is { } place)
            {
                if (json)
                {
                    seat.Talk.Json(writer =>
                    {
                        writer.WriteString("id", stored[place].Id.Hex);
                        writer.WriteString("kind", line.Kind);
                    });
                }
                else
                {
                    seat.Talk.Line($"{stored[place].Id.Hex[..12]} {line.Kind}");
                }

                continue;
            }

            refused++;
            if (json) seat.Talk.JsonFault(null, line.Faults);
            seat.Talk.SayFaults(line.Faults);
        }

        seat.Talk.Say(CommandSentences.Noted(stored.Count, refused));
        if (refused == 0) return ExitCodes.Done;
        return stored.Count == 0 ? ExitCodes.Refused : ExitCodes.Look;
    }

    private static int List(Seat seat, bool json)
    {
        foreach (var kind in Desk.Kinds.All)
        {
            if (!json)
            {
                seat.Talk.Line($"{kind.Name,-12} {kind.Room,-10} {kind.Says}");
                foreach (var key in kind.Keys) seat.Talk.Line($"    {key.Key,-16} {key.Type}{(key.Required ? "" : ", may be missing")}: {key.Says}");
                continue;
            }

            seat.Talk.Json(writer =>
            {
                writer.WriteString("kind", kind.Name);
                writer.WriteNumber("version", kind.Version);
                writer.WriteString("room", kind.Room);
                writer.WriteString("role", kind.Role switch
                {
                    EntryRole.Sighting => "sighting",
                    EntryRole.MachineSighting => "machine sighting",
                    EntryRole.Decision => "decision",
                    _ => "control",
                });
                writer.WriteString("says", kind.Says);
                writer.WriteStartArray("keys");
                foreach (var key in kind.Keys)
                {
                    writer.WriteStartObject();
                    writer.WriteString("key", key.Key);
                    writer.WriteString("type", key.Type);
                    writer.WriteBoolean("required", key.Required);
                    writer.WriteString("says", key.Says);
                    writer.WriteEndObject();
                }

                writer.WriteEndArray();
            });
        }

        return ExitCodes.Done;
    }
}
