using System.CommandLine;
using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Talking;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Commands;

/// <summary><c>lidoff look DOSSIER [PICTURE…] [--json]</c>: what pictures themselves say of their camera, stored once.</summary>
public sealed class LookCommand : ILidoffCommand
{
    /// <inheritdoc/>
    public string Says => "Looks at pictures for what their edges and words say of the camera, and stores it: lengths in them then rest on it. Without names: at every picture with a known length that nobody looked at.";

    /// <inheritdoc/>
    public string Example => "look band front.jpg --json";

    /// <inheritdoc/>
    public void Build(Command command, Seat seat)
    {
        var dossier = new Argument<string>("DOSSIER") { Description = "Short name of the dossier." };
        var pictures = new Argument<string[]>("PICTURE") { Description = "Pictures by file name, entry or hash; these are looked at again.", Arity = ArgumentArity.ZeroOrMore };
        var json = new Option<bool>("--json") { Description = "One JSON object a picture on standard output." };
        command.Arguments.Add(dossier);
        command.Arguments.Add(pictures);
        command.Options.Add(json);
        command.SetAction((parsed, stop) => Task.FromResult(Desk.Within(seat, parsed, workspace =>
        {
            var opened = Desk.Dossier(seat, workspace, parsed.GetValue(dossier)!);
            return opened.TryValue(out var open) ? Run(seat, open, parsed.GetValue(pictures) ?? [], parsed.GetValue(json), stop) : Desk.Refuse(seat, opened.Faults);
        })));
    }

    private static int Run(Seat seat, OpenDossier open, string[] names, bool json, CancellationToken stop)
    {
        var refused = 0;
        var looked = 0;
        foreach (var (name, found) in names.Length > 0 ? Named(open, names) : Unseen(open))
        {
            stop.ThrowIfCancellationRequested();
            var stored = found.Then<(StoredEntry, LookSighting)>(file => Look(open, file));
            if (stored.TryValue(out var pair))
            {
                looked++;
                if (json) seat.Talk.Json(writer => Write(writer, pair.Item1, pair.Item2));
                else seat.Talk.Line(CommandSentences.Looked(name, pair.Item2));
            }
            else
            {
                refused++;
                if (json) seat.Talk.JsonFault(name, stored.Faults);
                seat.Talk.SayFaults(stored.Faults);
            }
        }

        if (looked + refused == 0) seat.Talk.Say(CommandSentences.NothingToLookAt);
        return refused == 0 ? ExitCodes.Done : looked == 0 ? ExitCodes.Refused : ExitCodes.Look;
    }

    private static IEnumerable<(string Name, Outcome<FileAdded> File)> Named(OpenDossier open, string[] names) => names.Select(name =>
    {
        var picture = open.Model.Picture(name);
        Outcome<FileAdded> file = picture.Found
            ? open.Session.View.Live<FileAdded>().First(each => each.Value.Sha256 == picture.Sha256).Value
            : new Fault(name, "a picture of the dossier", picture.Missing!);
        return (name, file);
    });

    private static List<(string Name, Outcome<FileAdded> File)> Unseen(OpenDossier open) =>
    [
        .. open.Session.View.Live<FileAdded>().Select(each => each.Value).DistinctBy(each => each.Sha256)
            .Where(each => each.Type.StartsWith("image/", StringComparison.Ordinal) && open.WantsLook(each.Sha256))
            .Select(each => (each.Name, (Outcome<FileAdded>)each)),
    ];

    private static Outcome<(StoredEntry, LookSighting)> Look(OpenDossier open, FileAdded file)
    {
        var path = open.Workspace.Files.PathOf(file.Sha256);
        return PictureFile.Read(path, file.Name).Then<PictureLook>(header => PictureLook.At(path, file.Name, header)).Then<(StoredEntry, LookSighting)>(look =>
        {
            var seen = LookSighting.Of(file.Sha256, look, OpenDossier.Program);
            return open.Append([EntryDraft.Of(open.Session.View.Dossier, new LookKind(), json => LookKind.WriteKeys(json, seen))]).Then(stored => (stored[0], seen));
        });
    }

    private static void Write(Utf8JsonWriter writer, StoredEntry stored, LookSighting seen)
    {
        writer.WriteString("id", stored.Id.Hex);
        writer.WriteString("kind", stored.Entry.Kind);
        LookKind.WriteKeys(writer, seen);
    }
}
