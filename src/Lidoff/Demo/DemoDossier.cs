using System.Text;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;
using Lidoff.Evidence.Store;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Kinds;

namespace Lidoff.Demo;

/// <summary>
/// The demo dossier: <i>Brindle</i>, an invented bark counter and night lamp for a working dog's collar. Pictures are rendered with known
/// truth, everything noted goes the way a user's lines go, and one claim is out of date on purpose.
/// </summary>
public static class DemoDossier
{
    /// <summary>Short name of the demo dossier.</summary>
    public const string Name = "demo";

    /// <summary>
    /// Lays the demo out; where it is there already it is left as it is. <paramref name="seat"/> says what is being done, since the
    /// pictures take a few seconds.
    /// </summary>
    public static Outcome<bool> LayOut(Seat seat, Workspace workspace)
    {
        Guard.NotNull(workspace);
        var known = workspace.Store.Dossiers();
        if (!known.TryValue(out var names)) return Outcome<bool>.Failed(known.Faults);
        if (names.Contains(Name, StringComparer.Ordinal)) return false;
        seat.Talk.Say("Laying out the demo: an invented device, its pictures rendered here.");
        var begun = DossierSession.Begin(workspace, Name, "Brindle, a bark counter and night lamp for a working dog's collar", "Invented device, invented data.");
        return begun.Then(_ => Desk.Dossier(seat, workspace, Name)).Then(dossier => Fill(workspace, dossier));
    }

    private static Outcome<bool> Fill(Workspace workspace, OpenDossier dossier)
    {
        var faults = new List<Fault>();
        foreach (var (name, content) in Files()) faults.AddRange(Add(workspace, dossier, content, name));
        if (faults.Count == 0) faults.AddRange(Note(workspace, dossier, DemoLines.First(), DemoLines.FirstDay));
        if (faults.Count == 0) faults.AddRange(dossier.Append(Looks(workspace, dossier)).Faults);
        if (faults.Count == 0) faults.AddRange(dossier.Append([Publication(dossier)]).Faults);
        // After publishing, a reading turns out to have been written down wrongly: the claims on it must now say so.
        if (faults.Count == 0) faults.AddRange(Note(workspace, dossier, DemoLines.Later(Swapped(dossier)), DemoLines.LaterDay));
        return faults.Count == 0 ? true : Outcome<bool>.Failed(faults);
    }

    /// <summary>
    /// Every file, in a fixed order. Pictures are rendered on all cores at once: each is a function of its scene alone, so that the
    /// order in which they become ready changes nothing.
    /// </summary>
    private static IEnumerable<(string Name, byte[] Content)> Files()
    {
        var pictures = BrindleShots.All.AsParallel().AsOrdered().WithMergeOptions(ParallelMergeOptions.NotBuffered).Select(shot =>
        {
            using var picture = new MemoryStream();
            SceneRenderer.Render(shot.Scene).WritePng(picture);
            return (shot.Name, picture.ToArray());
        });
        return pictures.AsEnumerable().Append((DemoCurrent.Name, Encoding.UTF8.GetBytes(DemoCurrent.Text()))).Append((DemoBus.Name, Encoding.UTF8.GetBytes(DemoBus.Text())));
    }

    private static IReadOnlyList<Fault> Add(Workspace workspace, OpenDossier dossier, byte[] content, string name)
    {
        using var stream = new MemoryStream(content);
        return FileTaking.Take(workspace, dossier.Session, stream, name, "demo", FileRecognisers.Found()).Faults;
    }

    private static IReadOnlyList<Fault> Note(Workspace workspace, OpenDossier dossier, IReadOnlyList<string> lines, DateTimeOffset day)
    {
        var batch = new NoteReader(Desk.Kinds, prefix => workspace.Store.Find(Name, prefix)).Read(Name, Encoding.UTF8.GetBytes(string.Join('\n', DemoLines.Seen(lines, day))), "the demo");
        var faults = batch.Lines.SelectMany(line => line.Faults).ToList();
        return faults.Count > 0 ? faults : dossier.Append(batch.Drafts).Faults;
    }

    /// <summary>What the pictures that something is measured in say themselves, as the workbench would look: before the claims are published, so that none moves when it is opened.</summary>
    private static IReadOnlyList<EntryDraft> Looks(Workspace workspace, OpenDossier dossier)
    {
        var measured = MeasuredPictures.Of(dossier);
        var pictures = dossier.Session.View.Live<FileAdded>().Select(file => file.Value).Where(file => measured.Contains(file.Sha256)).ToList();
        return
        [
            .. pictures.AsParallel().AsOrdered().Select(file =>
            {
                var path = workspace.Files.PathOf(file.Sha256);
                return LookSighting.Of(file.Sha256, PictureLook.At(path, file.Name, PictureFile.Read(path, file.Name).Value).Value, OpenDossier.Program);
            }).AsEnumerable().Select(look => EntryDraft.Of(Name, new LookKind(), json => LookKind.WriteKeys(json, look)) with { By = "the demo" }),
        ];
    }

    private static EntryId Swapped(OpenDossier dossier) =>
        dossier.Session.View.Live<LengthSighting>().Single(length => length.Value is { Spot: "J1", ByInstrument: not null }).Id;

    private static EntryDraft Publication(OpenDossier dossier) =>
        EntryDraft.Of(Name, new PublishKind(), json => PublishKind.WriteKeys(json, [.. dossier.Claims.Select(claim => ClaimBook.Baseline(claim, OpenDossier.Program))])) with { By = "the demo" };
}
