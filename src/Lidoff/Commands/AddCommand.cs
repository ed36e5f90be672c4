using System.CommandLine;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Talking;

namespace Lidoff.Commands;

/// <summary><c>lidoff add DOSSIER FILE… [--json]</c>: files into a dossier, each recognised by its content.</summary>
public sealed class AddCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Puts files into a dossier. Each is kept as it is, under the hash of its content.";

    /// <inheritdoc/>
    public string Example => "add band front.jpg back.jpg";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string>("DOSSIER") { Description = "Short name of the dossier." };
        var files = new Argument<string[]>("FILE") { Description = "Files to add.", Arity = ArgumentArity.OneOrMore };
        var json = new Option<bool>("--json") { Description = "One JSON object a file on standard output." };
        command.Arguments.Add(dossier);
        command.Arguments.Add(files);
        command.Options.Add(json);
        command.SetAction((parsed, stop) => Task.FromResult(Run(seat, parsed, parsed.GetValue(dossier)!, parsed.GetValue(files)!, parsed.GetValue(json), stop)));
    }

    private static int Run(Seat seat, ParseResult parsed, string dossier, string[] files, bool json, CancellationToken stop)
    {
        var opened = Desk.OpenExisting(seat, parsed);
        if (!opened.TryValue(out var workspace)) return Desk.Refuse(seat, opened.Faults);
        using (workspace)
        {
            var session = DossierSession.Open(workspace, dossier, Desk.Kinds);
            if (!session.Ok) return Desk.Refuse(seat, session.Faults);
            var look = false;
            foreach (var file in files)
            {
                stop.ThrowIfCancellationRequested();
                var added = Add(seat, workspace, session.Value, file, stop);
                if (added.TryValue(out var pair))
                {
                    var (stored, fact) = pair;
                    if (json) seat.Talk.Json(writer => Write(writer, stored, fact));
                    else seat.Talk.Line($"{fact.Name}: {(fact.Type.Length > 0 ? fact.Type : "not recognised, kept as it is")}, {stored.Id.Hex[..12]}");
                    look |= Remarks(seat, workspace, fact);
                }
                else
                {
                    if (json) seat.Talk.JsonFault(file, added.Faults);
                    seat.Talk.SayFaults(added.Faults);
                    look = true;
                }
            }

            return look ? ExitCodes.Look : ExitCodes.Done;
        }
    }

    private static Outcome<(StoredEntry Stored, FileAdded Fact)> Add(Seat seat, Workspace workspace, DossierSession session, string file, CancellationToken stop) =>
        InputFiles.Open(seat, file).Then(stream =>
        {
            using (stream)
            {
                return FileTaking.Take(workspace, session, stream, file == "-" ? "standard-input" : Path.GetFileName(file), "add", FileRecognisers.Found(), stop: stop);
            }
        });

    /// <summary>Says what is odd about a file. A broken picture is kept all the same: nothing is lost, and it is said.</summary>
    private static bool Remarks(Seat seat, Workspace workspace, FileAdded fact)
    {
        if (fact.Bytes == 0)
        {
            seat.Talk.Say(CommandSentences.EmptyFile(fact.Name));
            return true;
        }

        if (!fact.Type.StartsWith("image/", StringComparison.Ordinal)) return false;
        var header = PictureFile.Check(workspace.Files.PathOf(fact.Sha256), fact.Name);
        if (!header.Ok) seat.Talk.SayFaults(header.Faults);
        else foreach (var remark in header.Value.Remarks) seat.Talk.Say($"{fact.Name}: {remark}");
        return !header.Ok;
    }

    private static void Write(System.Text.Json.Utf8JsonWriter writer, StoredEntry stored, FileAdded fact)
    {
        writer.WriteString("id", stored.Id.Hex);
        writer.WriteString("kind", stored.Entry.Kind);
        writer.WriteString("name", fact.Name);
        writer.WriteString("sha256", fact.Sha256);
        writer.WriteNumber("bytes", fact.Bytes);
        writer.WriteString("type", fact.Type);
    }
}
