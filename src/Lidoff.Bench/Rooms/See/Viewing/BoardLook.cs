using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Boards;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Modelling;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>How a picture lies on its board.</summary>
/// <param name="Says">One sentence of how it lies, or why it does not.</param>
/// <param name="Lies">True when it lies on one.</param>
/// <param name="Notes">What to know: landmarks left out, a mirrored picture, a scale that the board contradicts.</param>
/// <param name="Landmarks">Landmarks pointed at in it, in natural order.</param>
/// <param name="Ghosts">Spots of other pictures of the same side, where they lie here.</param>
/// <param name="Names">Landmarks that other pictures show and this one does not yet, in natural order.</param>
public sealed record BoardLook(string Says, bool Lies, ValueList<string> Notes, ValueList<LandmarkRow> Landmarks, ValueList<GhostRow> Ghosts, ValueList<string> Names)
{
    // A spot is pointed at within its body, not at a mark that can be met to the pixel. A choice of ours.
    private const double SpotPx = 3;

    /// <summary>Of a picture that has no landmark.</summary>
    public static BoardLook None { get; } = new("", false, [], [], [], []);

    /// <summary>The picture as the dossier stands.</summary>
    public static BoardLook Of(OpenDossier dossier, string sha256, PictureFrame frame, IReadOnlyCollection<string> spotsHere)
    {
        var (view, model) = (dossier.Session.View, dossier.Model);
        var all = view.Live<LandmarkSighting>().Where(each => each.Value.At is not null && model.Picture(each.Value.Picture).Found).ToList();
        var here = all.Where(each => model.Picture(each.Value.Picture).Sha256 == sha256).ToList();
        var board = model.Board(sha256)?.Laid;
        var laid = board?.Picture(sha256);
        return new(
            Saying(board, laid, sha256, Alike(all, here, model)),
            laid is not null,
            laid is null ? [] : [.. laid.Remarks, .. laid.Warnings.Select(warning => warning.Say)],
            [.. here.Select(each => Row(each, laid)).OrderBy(row => row.Value.Landmark, NaturalOrder.Instance)],
            laid is null ? [] : [.. Carried(dossier, board!, laid, frame, spotsHere).OrderBy(ghost => ghost.Spot, NaturalOrder.Instance)],
            [.. all.Select(each => each.Value.Landmark).Except(here.Select(each => each.Value.Landmark), StringComparer.Ordinal).Order(NaturalOrder.Instance)]);
    }

    // Pictures that show two or more landmarks by the names of those here.
    private static List<string> Alike(List<Sighting<LandmarkSighting>> all, List<Sighting<LandmarkSighting>> here, DossierModel model)
    {
        var names = here.Select(each => each.Value.Landmark).ToHashSet(StringComparer.Ordinal);
        return [.. all.Except(here).Where(each => names.Contains(each.Value.Landmark)).GroupBy(each => model.Picture(each.Value.Picture).Name, StringComparer.Ordinal)
            .Where(picture => picture.Select(each => each.Value.Landmark).Distinct(StringComparer.Ordinal).Count() > 1).Select(picture => picture.Key).Order(StringComparer.Ordinal)];
    }

    private static string Saying(LaidBoard? board, LaidPicture? laid, string sha256, List<string> alike)
    {
        if (board is null) return "";
        if (laid is not null) return SeeSentences.LiesOn(board.Pictures.Count - 1, laid.Used, laid.Mirrored);
        return board.LeftOut.FirstOrDefault(left => left.Sha256 == sha256)?.Says ?? (alike.Count > 0 ? SeeSentences.NotTogether(alike) : SeeSentences.AloneOnBoard);
    }

    private static LandmarkRow Row(Sighting<LandmarkSighting> each, LaidPicture? laid)
    {
        var rest = laid?.Rests.FirstOrDefault(found => found.Name == each.Value.Landmark);
        var says = rest is not { Tested: true } ? "" : rest.Um is { } um ? Plain.Number(Math.Round(um)) + " µm" : Plain.Number(Math.Round(rest.Px, 1)) + " px";
        return new(each.Id, each.Specimen, each.Value.At!.Value, each.Value, says, rest?.Used ?? true);
    }

    private static IEnumerable<GhostRow> Carried(OpenDossier dossier, LaidBoard board, LaidPicture laid, PictureFrame frame, IReadOnlyCollection<string> spotsHere)
    {
        var carried = dossier.Session.View.Live<SpotSighting>().Where(spot => spot.Value.Picture.Length > 0 && !spotsHere.Contains(spot.Value.Spot))
            .Select(spot => (spot.Value, Picture: dossier.Model.Picture(spot.Value.Picture)))
            .Where(each => each.Picture.Found && each.Picture.Sha256 != laid.Sha256 && each.Value.Middle is not null && board.Picture(each.Picture.Sha256)?.Mirrored == laid.Mirrored)
            .Select(each => new GhostRow(each.Value.Spot, each.Picture.Name, board.Carry(each.Picture.Sha256, each.Value.Middle!.Value, SpotPx, laid.Sha256)));
        // Seen in several pictures, the one that says it best.
        return carried.Where(ghost => frame.Holds(ghost.At.At)).GroupBy(ghost => ghost.Spot, StringComparer.Ordinal).Select(group => group.MinBy(ghost => ghost.At.Reach)!);
    }
}
