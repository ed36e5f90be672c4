using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Recomputing;
using Lidoff.Seeing;
using Lidoff.Seeing.Boards;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// Lays the pictures of one specimen on its boards by their landmarks. Two specimens never lie on one another; what is known of a landmark's
/// place and was noted for no specimen counts for all.
/// </summary>
/// <param name="tables">The dossier.</param>
/// <param name="pictures">Which file a picture reference means.</param>
/// <param name="scales">The known lengths of a picture.</param>
/// <param name="sides">The side of a picture.</param>
/// <param name="specimens">The specimen of a picture.</param>
/// <param name="frame">Size of a stored picture by its hash, null where it is no picture.</param>
public sealed class BoardStep(DossierTables tables, PictureStep pictures, ScaleStep scales, SideStep sides, PictureSpecimenStep specimens, Func<string, PictureFrame?> frame) : Step<string, SpecimenBoards>
{
    /// <inheritdoc/>
    public override string Name => "board";

    /// <inheritdoc/>
    public override SpecimenBoards Compute(string key, IReads reads)
    {
        var problems = new List<string>();
        var sightings = tables.Landmarks.About(DossierTables.Whole, reads);
        var seen = new SortedDictionary<string, (PictureAnswer Picture, List<Sighting<LandmarkSighting>> Landmarks)>(StringComparer.Ordinal);
        foreach (var sighting in sightings.Where(each => each.Value.At is not null))
        {
            var picture = reads.Read(pictures, sighting.Value.Picture);
            if ((picture.Found ? reads.Read(specimens, picture.Sha256) : sighting.Specimen) != key) continue;
            if (Fault(picture, sighting.Value) is { } fault)
            {
                problems.Add(fault);
                continue;
            }

            if (!seen.TryGetValue(picture.Sha256, out var group)) seen.Add(picture.Sha256, group = (picture, []));
            // A landmark pointed at twice in one picture: the later one is meant.
            group.Landmarks.RemoveAll(each => each.Value.Landmark == sighting.Value.Landmark);
            group.Landmarks.Add(sighting);
        }

        var known = sightings.Where(each => (each.Specimen == key || each.Specimen.Length == 0) && each.Value is { XMm: not null, YMm: not null })
            .GroupBy(each => each.Value.Landmark, StringComparer.Ordinal).Select(group => group.Last()).ToList();
        var references = seen.Keys.ToDictionary(sha => sha, sha => reads.Read(scales, sha).References, StringComparer.Ordinal);
        var boards = BoardFit.Lay(
            [.. seen.Select(each => new PictureToLay(
                each.Key, each.Value.Picture.Name, frame(each.Key)!, reads.Read(sides, each.Key),
                [.. each.Value.Landmarks.Select(landmark => new SeenLandmark(landmark.Value.Landmark, landmark.Value.At!.Value, landmark.Value.UPx))],
                [.. references[each.Key].Select(reference => reference.Value.Reference)]))],
            [.. known.Select(each => new KnownPlace(each.Value.Landmark, each.Value.XMm!.Value, each.Value.YMm!.Value, each.Value.UMm))]);
        return new(key, [.. boards.Select(board => new PictureBoard(board, [.. RestsOn(board).Distinct().Order()], Packages(board)))], [.. problems.Distinct(StringComparer.Ordinal)]);

        ValueList<string> Packages(LaidBoard board) =>
        [
            .. references.Where(each => board.Picture(each.Key) is not null).SelectMany(each => each.Value).Select(reference => reference.Value.Package)
                .Where(spot => spot.Length > 0).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];

        IEnumerable<EntryId> RestsOn(LaidBoard board)
        {
            foreach (var (sha, (picture, landmarks)) in seen.Where(each => board.Picture(each.Key) is not null))
            {
                yield return picture.Added;
                foreach (var landmark in landmarks) yield return landmark.Id;
                foreach (var reference in references[sha]) yield return reference.Id;
            }

            foreach (var place in known.Where(place => board.Landmarks.Any(landmark => landmark.Name == place.Value.Landmark))) yield return place.Id;
        }
    }

    private string? Fault(PictureAnswer picture, LandmarkSighting landmark)
    {
        if (!picture.Found) return picture.Missing;
        if (frame(picture.Sha256) is not { } size) return WeighingSentences.NotAPicture(picture.Name);
        var at = landmark.At!.Value;
        return size.Holds(at) ? null : SeeingSentences.OutsideFrame(landmark.Landmark, at.X, at.Y, size.Width, size.Height);
    }
}
