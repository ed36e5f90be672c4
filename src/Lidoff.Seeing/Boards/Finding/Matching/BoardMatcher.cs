using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>
/// Finds out how two pictures of one board lie on one another by the marks found in both: two of one side, or one of each, whichever way
/// round. Both relations are always tried, so that a flipped picture is recognised. What accident could have made, and what fits in
/// several ways, is refused with a sentence. The same marks and seed give the same answer.
/// </summary>
public static class BoardMatcher
{
    // Fewer marks than this agree on any two boards.
    private const int Least = 7;

    // Natural logarithm of the odds against accident: among ten thousand pairs of different boards one would be taken for one board, if
    // marks lay as they do by accident. They do not quite (parts stand in rows), hence a thousand more. A judgement.
    private const double MostLogOdds = -16;

    // Another way stands beside the best one where it is as little an accident by some half as many marks (in logarithms, which go with them),
    // until the marks that tell the two apart speak.
    private const double AlsoLogOdds = -2;
    private const double AlsoShare = 0.4;
    private const double Decides = 1e-3;

    // Two pictures of one side are alike by 0.89 and more, of two sides by 0.29 and less (rendered boards with lens, light and slant; 0.99 for a
    // photograph and its smaller copy).
    private const double Alike = 0.55;
    private const int Guesses = 90;

    // Fits that differ by less than this share of the board are one: of two pictures of one side what stands up makes another, a little beside.
    private const double OneFit = 0.015;

    /// <summary>Matches.</summary>
    /// <param name="first">A picture and its marks.</param>
    /// <param name="second">Another one.</param>
    /// <param name="saidMirrored">Whether the sides noted of both say that they mirror one another; null where one is not noted.</param>
    /// <param name="seed">Seed of what is tried.</param>
    public static Outcome<BoardMatch> Match((string Name, PictureMarks Marks) first, (string Name, PictureMarks Marks) second, bool? saidMirrored, ulong seed = 1)
    {
        foreach (var (name, marks) in new[] { first, second })
        {
            if (marks.Marks.Count < Least) return new Fault(name, "seven holes or vias", FindingSentences.FewMarks(name, marks.Marks.Count));
        }

        var (from, to) = (new MarkField(first.Marks), new MarkField(second.Marks));
        var (seeds, tried) = MatchSeeds.Of(from, to, seed, Guesses);
        var log = Elementary.Log(Math.Max(1, tried));
        var fits = Distinct(from, to, [.. seeds.Select(guess => MatchFit.Grown(from, to, guess, log)).OfType<MatchFit>().OrderBy(fit => fit.LogOdds)]);
        var most = fits.Count == 0 ? 0 : fits.Max(fit => fit.Pairs.Count);
        var held = fits.Where(fit => fit.LogOdds < AlsoLogOdds && fit.Pairs.Count >= Least).ToList();
        if (held.Count == 0 || held[0].LogOdds > MostLogOdds) return Refused(first, second, from, to, fits, most);
        // A caption, a ruler or the table may be the same in both pictures while the board was turned over between them: what was noted of the
        // sides comes first, where a way that agrees with it is no accident.
        if (saidMirrored is { } said && held.Any(fit => fit.Mirrored == said && fit.LogOdds < MostLogOdds)) held.RemoveAll(fit => fit.Mirrored != said);
        var open = Open(held);
        if (open.TrueForAll(fit => fit.Mirrored == open[0].Mirrored)) open = ByLooks(first.Marks, second.Marks, from, open);
        if (open.Count > 1) return new Fault(second.Name, "a board that lies one way only", FindingSentences.SeveralWays(first.Name, second.Name, [.. open.Select(fit => (fit.Pairs.Count, fit.Mirrored, Turn(fit, first.Marks)))]));
        return Answer(first, second, from, to, open[0].OnBoard(from, to, log), saidMirrored);
    }

    private static Outcome<BoardMatch> Answer((string Name, PictureMarks Marks) first, (string Name, PictureMarks Marks) second, MarkField from, MarkField to, MatchFit fit, bool? saidMirrored)
    {
        var view = new Projective("first", "second", fit.Map);
        var pairs = fit.Pairs.Select(pair => (First: from.Marks[pair.From], Second: to.Marks[pair.To]))
            .Select(pair => new MatchedMark(pair.First, pair.Second, view.Map(pair.First.At).DistanceTo(pair.Second.At))).ToList();
        var likeness = Likeness.Of(first.Marks.Sketch, second.Marks.Sketch, fit.Map, [.. pairs.Select(pair => pair.First)]);
        var turn = Turn(fit, first.Marks);
        var says = new List<string>();
        if (fit.Mirrored && likeness > Alike) says.Add(FindingSentences.Flipped(first.Name, second.Name));
        else if (saidMirrored is { } said && said != fit.Mirrored) says.Add(FindingSentences.AgainstSides(first.Name, second.Name, fit.Mirrored));
        if (Math.Abs(turn) > 20) says.Add(FindingSentences.Turned(second.Name, first.Name, turn));
        return new BoardMatch(fit.Mirrored, turn, view, [.. pairs], Could(from, to, fit), Math.Sqrt(pairs.Average(pair => pair.RestPx * pair.RestPx)), fit.ByChance, fit.LogOdds, likeness, [.. says]);
    }

    private static Fault Refused((string Name, PictureMarks Marks) first, (string Name, PictureMarks Marks) second, MarkField from, MarkField to, List<MatchFit> fits, int most) =>
        new(second.Name, "a picture of the same board", FindingSentences.NotOneBoard(first.Name, second.Name, most, fits.Count == 0 ? Math.Min(from.Marks.Count, to.Marks.Count) : Could(from, to, fits[0])));

    // Marks that the other picture should show, of whichever picture has fewer of them.
    private static int Could(MarkField from, MarkField to, MatchFit fit)
    {
        var view = new Projective("a", "b", fit.Map);
        var back = view.Inverse();
        return Math.Max(fit.Pairs.Count, Math.Min(from.Marks.Count(mark => to.Holds(view.Map(mark.At))), to.Marks.Count(mark => from.Holds(back.Map(mark.At)))));
    }

    private static List<MatchFit> Distinct(MarkField from, MarkField to, List<MatchFit> fits)
    {
        var kept = new List<MatchFit>();
        foreach (var fit in fits) if (!kept.Exists(other => Together(from, other, fit, OneFit * to.Extent))) kept.Add(fit);
        return kept;
    }

    // Two fits are one where most of the marks that agree by the better one are put to within its tolerance or nearly so by the other.
    private static bool Together(MarkField from, MatchFit better, MatchFit fit, double least)
    {
        var (a, b) = (new Projective("a", "b", better.Map), new Projective("a", "b", fit.Map));
        var near = better.Pairs.Count(pair => a.Map(from.Marks[pair.From].At).DistanceTo(b.Map(from.Marks[pair.From].At)) < Math.Max(least, 3 * Math.Max(better.Tolerance, fit.Tolerance)));
        return 2 * near > better.Pairs.Count;
    }

    /// <summary>The best fit, and every other that the marks do not tell from it, or that lies the other way round and is no accident either: then one of the two is not the board.</summary>
    private static List<MatchFit> Open(List<MatchFit> held)
    {
        var best = held[0];
        var mine = best.Pairs.Select(pair => pair.From).ToHashSet();
        return [best, .. held.Skip(1).Where(fit =>
        {
            if (fit.Mirrored != best.Mirrored && fit.LogOdds < MostLogOdds) return true;
            if (fit.LogOdds >= AlsoShare * best.LogOdds) return false;
            var theirs = fit.Pairs.Select(pair => pair.From).ToHashSet();
            return Chance.Sign(mine.Count(mark => !theirs.Contains(mark)), theirs.Count(mark => !mine.Contains(mark))) > Decides;
        })];
    }

    // Two pictures of one side show the same parts: where one way alone makes them alike, it is that one.
    private static List<MatchFit> ByLooks(PictureMarks first, PictureMarks second, MarkField from, List<MatchFit> open)
    {
        var looks = open.ConvertAll(fit => (Fit: fit, Alike: Likeness.Of(first.Sketch, second.Sketch, fit.Map, [.. fit.Pairs.Select(pair => from.Marks[pair.From])])));
        var best = looks.MaxBy(look => look.Alike);
        return best.Alike > Alike && looks.TrueForAll(look => look.Fit == best.Fit || look.Alike < 0.5 * best.Alike) ? [best.Fit] : open;
    }

    private static double Turn(MatchFit fit, PictureMarks first)
    {
        var j = new Projective("a", "b", fit.Map).JacobianAt(new(first.Frame.Width / 2.0, first.Frame.Height / 2.0));
        var flip = fit.Mirrored ? -1 : 1;
        // A mirrored map is a flip of x and then a turn.
        return Elementary.Atan2((flip * j.YX) - j.XY, (flip * j.XX) + j.YY) * 180 / Math.PI;
    }
}
