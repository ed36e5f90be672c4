using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Boards;

/// <summary>
/// Lays pictures of a board onto one another by landmarks that they share: every picture is a view of one flat board, all of them are
/// fitted at once, blunders are taken out and named. Lenses are taken as straight. The order in which things are given changes nothing.
/// </summary>
public static class BoardFit
{
    /// <summary>Lays each board: pictures that share no landmark with one another, over others either, are of different boards.</summary>
    public static ValueList<LaidBoard> Lay(IReadOnlyList<PictureToLay> pictures, IReadOnlyList<KnownPlace> known)
    {
        Guard.NotNull(known);
        var rest = Guard.NotNull(pictures).OrderBy(picture => picture.Sha256, StringComparer.Ordinal).ToList();
        var boards = new List<LaidBoard>();
        while (rest.Count > 0)
        {
            var group = new List<PictureToLay> { rest[0] };
            var names = rest[0].Landmarks.Select(landmark => landmark.Name).ToHashSet(StringComparer.Ordinal);
            while (rest.Find(picture => !group.Contains(picture) && picture.Landmarks.Any(landmark => names.Contains(landmark.Name))) is { } next)
            {
                group.Add(next);
                names.UnionWith(next.Landmarks.Select(landmark => landmark.Name));
            }

            rest.RemoveAll(group.Contains);
            boards.Add(One(group, [.. known.Where(place => names.Contains(place.Name)).OrderBy(place => place.Name, StringComparer.Ordinal)]));
        }

        return [.. boards];
    }

    /// <summary>Lays pictures of one board.</summary>
    /// <param name="pictures">The pictures, each hash once.</param>
    /// <param name="known">Landmarks whose place is known, each name once; fewer than two that one picture shows are not used.</param>
    public static LaidBoard One(IReadOnlyList<PictureToLay> pictures, IReadOnlyList<KnownPlace> known)
    {
        Guard.That(pictures.DistinctBy(picture => picture.Sha256, StringComparer.Ordinal).Count() == pictures.Count, "each picture once");
        Guard.That(known.DistinctBy(place => place.Name, StringComparer.Ordinal).Count() == known.Count, "each known place once");
        var sorted = pictures.OrderBy(picture => picture.Sha256, StringComparer.Ordinal)
            .Select(picture => picture with { Landmarks = [.. picture.Landmarks.OrderBy(landmark => landmark.Name, StringComparer.Ordinal)], References = [.. picture.References.Where(Usable)] }).ToList();
        KnownPlace[] places = [.. known.OrderBy(place => place.Name, StringComparer.Ordinal)];
        if (!sorted.Exists(picture => picture.Landmarks.Count(landmark => places.Any(place => place.Name == landmark.Name)) >= 2)) places = [];
        var misfits = new List<LeftOutPicture>();
        PictureToLay? seed = null;
        var again = true;
        while (true)
        {
            var candidates = sorted.Where(picture => misfits.TrueForAll(misfit => misfit.Sha256 != picture.Sha256)).ToList();
            if (candidates.Count == 0) return new(sorted, places, [.. misfits]);
            if (places.Length == 0) seed ??= BoardGrowth.Seed(candidates);
            var start = BoardGrowth.From(candidates, places, seed);
            ValueList<LeftOutPicture> leftOut = [.. misfits.Concat(start.LeftOut).OrderBy(picture => picture.Sha256, StringComparer.Ordinal)];
            if (start.Laid.Count == 0 || (start.Laid.Count == 1 && places.Length == 0)) return new(sorted, places, leftOut);
            var joint = BoardJoint.Of(start, places, seed);
            if (joint.Misfit is { } odd)
            {
                misfits.Add(new(odd.Sha256, odd.Name, SeeingSentences.NotThisBoard(odd.Name, odd.Landmarks.Count)));
                continue;
            }

            var contrary = Contrary(joint);
            if (seed is not null && again && 2 * contrary.Count > joint.Pictures.Count(picture => picture.SideSaid))
            {
                // The first picture is the odd one: a board laid from it would be seen from its back.
                seed = BoardGrowth.Seed([.. contrary.Select(view => joint.Pictures[view])]);
                again = false;
                continue;
            }

            return new(sorted, places, leftOut, joint, seed, contrary);
        }
    }

    private static List<int> Contrary(BoardJoint joint) =>
        [.. Enumerable.Range(0, joint.Pictures.Count).Where(view => joint.Pictures[view].SideSaid && joint.Pictures[view].SaidMirrored != joint.Solution.State.Views[view].Mirrored)];

    private static bool Usable(ReferenceLength reference) => reference.LengthMm > 0 && reference.From.DistanceTo(reference.To) > 0;
}
