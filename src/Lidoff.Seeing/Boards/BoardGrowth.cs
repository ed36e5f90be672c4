using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Seeing.Boards;

/// <summary>Lays pictures one after the other onto what lies already, so that the joint fit starts near its end.</summary>
internal sealed class BoardGrowth
{
    // Below this many times as likely (e^4.5, 90 : 1) a mirror image and its contrary are not told apart.
    private const double Decides = 9;

    // A view has four numbers without a prior; with four landmarks kept, four equations still test it.
    private const int LeastKept = 4;

    // Used where nothing tells a length: the first picture's long side is then this many units.
    private const double Nominal = 40;

    private readonly List<PictureToLay> waiting;
    private readonly Dictionary<string, (int Shared, string Says)> refused = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PlacedLandmark> places = new(StringComparer.Ordinal);
    private readonly List<(PictureToLay Picture, BoardView View)> laid = [];

    private BoardGrowth(IReadOnlyList<PictureToLay> pictures) => waiting = [.. pictures];

    /// <summary>Grows from known places, or from a first picture.</summary>
    /// <param name="pictures">All, in order of their hashes.</param>
    /// <param name="known">Known places; empty for none.</param>
    /// <param name="seed">The first picture, which then lies as seen square; null with known places.</param>
    public static BoardStart From(IReadOnlyList<PictureToLay> pictures, IReadOnlyList<KnownPlace> known, PictureToLay? seed)
    {
        var growth = new BoardGrowth(pictures);
        foreach (var place in known) growth.places[place.Name] = new(new(place.X, place.Y), place.U);
        if (seed is not null) growth.Lay(seed, BoardView.Square(seed.Frame, seed.SaidMirrored, Scale(seed)));
        growth.Grow();
        return new(growth.laid, growth.places, [.. growth.waiting.Select(growth.Refusal)]);
    }

    /// <summary>The picture to begin with: one that reaches most others, has a known length, shows the top, shares most landmarks.</summary>
    public static PictureToLay Seed(IReadOnlyList<PictureToLay> pictures) => pictures
        .OrderByDescending(picture => Reach(picture, pictures))
        .ThenByDescending(picture => picture.OnBoard.Any())
        .ThenByDescending(picture => picture.Side == PictureSide.Top)
        .ThenByDescending(picture => picture.Landmarks.Count(landmark => pictures.Count(other => other.Landmarks.Any(each => each.Name == landmark.Name)) > 1))
        .ThenBy(picture => picture.Sha256, StringComparer.Ordinal)
        .First();

    private static int Reach(PictureToLay from, IReadOnlyList<PictureToLay> pictures)
    {
        var names = from.Landmarks.Select(landmark => landmark.Name).ToHashSet(StringComparer.Ordinal);
        var (reached, rest) = (1, pictures.Where(picture => picture != from).ToList());
        while (rest.Find(picture => picture.Landmarks.Count(landmark => names.Contains(landmark.Name)) >= 2) is { } next)
        {
            names.UnionWith(next.Landmarks.Select(landmark => landmark.Name));
            rest.Remove(next);
            reached++;
        }

        return reached;
    }

    private static double Scale(PictureToLay picture) => picture.OnBoard.Any()
        ? Elementary.Exp(picture.OnBoard.Average(reference => Elementary.Log(reference.From.DistanceTo(reference.To) / reference.LengthMm)))
        : Math.Max(picture.Frame.Width, picture.Frame.Height) / Nominal;

    private void Grow()
    {
        while (Next() is { } picture)
        {
            var shared = Shared(picture);
            if (View(picture, shared) is { } view) Lay(picture, view);
        }
    }

    private PictureToLay? Next() => waiting
        .Where(picture => Shared(picture) is { Count: >= 2 } shared && (!refused.TryGetValue(picture.Sha256, out var before) || before.Shared < shared.Count))
        .OrderByDescending(picture => Shared(picture).Count)
        .ThenBy(picture => picture.Sha256, StringComparer.Ordinal)
        .FirstOrDefault();

    private List<SeenLandmark> Shared(PictureToLay picture) => [.. picture.Landmarks.Where(landmark => places.ContainsKey(landmark.Name))];

    private void Lay(PictureToLay picture, BoardView view)
    {
        waiting.Remove(picture);
        laid.Add((picture, view));
        foreach (var landmark in picture.Landmarks.Where(landmark => !places.ContainsKey(landmark.Name)))
        {
            places[landmark.Name] = new(view.Find(landmark.At), landmark.UPx / view.PxPerMm);
        }
    }

    private BoardView? View(PictureToLay picture, List<SeenLandmark> shared)
    {
        var least = Math.Max(LeastKept, (int)Math.Ceiling(0.6 * shared.Count));
        var kept = shared;
        var sides = Sides(picture, kept);
        while (sides.Count > 0 && !Fits(sides.Min(side => side.Cost), kept.Count) && kept.Count > least)
        {
            (kept, sides) = kept.Select(landmark => kept.Where(other => other != landmark).ToList()).Select(fewer => (fewer, Sides(picture, fewer))).MinBy(each => each.Item2.Select(side => side.Cost).DefaultIfEmpty(double.PositiveInfinity).Min());
        }

        if (sides.Count == 0 || !Fits(sides.Min(side => side.Cost), kept.Count)) return Refuse(picture, shared.Count, SeeingSentences.NotThisBoard(picture.Name, shared.Count));
        if (Math.Abs(sides[0].Cost - sides[1].Cost) > Decides) return sides.MinBy(side => side.Cost).View;
        if (!picture.SideSaid) return Refuse(picture, shared.Count, SeeingSentences.SideOpen(picture.Name, shared.Count));
        return sides.Single(side => side.View.Mirrored == picture.SaidMirrored).View;
    }

    private BoardView? Refuse(PictureToLay picture, int shared, string says)
    {
        refused[picture.Sha256] = (shared, says);
        return null;
    }

    private LeftOutPicture Refusal(PictureToLay picture)
    {
        if (refused.TryGetValue(picture.Sha256, out var why)) return new(picture.Sha256, picture.Name, why.Says);
        var seen = laid.SelectMany(each => each.Picture.Landmarks).GroupBy(landmark => landmark.Name, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Count(), StringComparer.Ordinal);
        var missing = places.Keys.Where(name => picture.Landmarks.All(landmark => landmark.Name != name))
            .OrderByDescending(name => seen.GetValueOrDefault(name)).ThenBy(name => name, StringComparer.Ordinal).Take(4).ToList();
        return new(picture.Sha256, picture.Name, SeeingSentences.TooFewLandmarks(picture.Name, Shared(picture).Count, missing));
    }

    // Twice the degrees and the limit of a single blunder: what lies already has doubts of its own that hang together.
    private static bool Fits(double cost, int landmarks) => cost < BoardBlunders.Limit + (4 * landmarks);

    private List<(BoardView View, double Cost)> Sides(PictureToLay picture, List<SeenLandmark> shared)
    {
        var pairs = shared.Select(landmark => new PointPair(places[landmark.Name].At, landmark.At)).ToList();
        if (pairs.TrueForAll(pair => pair.From == pairs[0].From) || pairs.TrueForAll(pair => pair.To == pairs[0].To)) return [];
        var solved = new[] { false, true }.Select(mirrored => Alone(BoardView.Similar(pairs, picture.Frame, mirrored), shared)).ToList();
        return solved.TrueForAll(each => double.IsFinite(each.Cost)) ? solved : [];
    }

    private (BoardView View, double Cost) Alone(BoardView start, List<SeenLandmark> shared)
    {
        var problem = new BoardProblem(1, shared.Count, null, false)
        {
            Sightings = [.. shared.Select((landmark, i) => new BoardSighting(0, i, landmark.At, landmark.UPx))],
            Known = [.. shared.Select((landmark, i) => (i, new KnownPlace(landmark.Name, places[landmark.Name].At.X, places[landmark.Name].At.Y, places[landmark.Name].U)))],
        };
        var solution = BoardSolution.Of(problem, new([start], [.. shared.Select(landmark => places[landmark.Name].At)]));
        return (solution.State.Views[0], solution.Cost);
    }
}
