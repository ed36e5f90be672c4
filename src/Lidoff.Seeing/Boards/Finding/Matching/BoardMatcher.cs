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

    // A mark or two agree by accident, whatever the density of marks says: on a photographed pair whose rows fit two holes on as well ten have no twin by the right way and two by the other, on
    // symmetric boards none to two by either.
    private const double LeastByChance = 0.5;
    private const int MostLone = 2;

    // Two pictures of one side are alike by 0.89 and more, of two sides by 0.29 and less (rendered boards with lens, light and slant; 0.99 for a
    // photograph and its smaller copy).
    private const double Alike = 0.55;
    private const double Unlike = 0.3;
    private const int Guesses = 90;

    // What was noted of two sides is wrong in one pair of some thousand, or so it is taken here (a judgement): a way against it must be so much surer.
    private const double OverSides = MostLogOdds - 7;
    private const double FarLess = 2;

    // Marks that agree tell how alike a board looks where they reach over so much of what all marks do: within a caption all is alike.
    private const double LeastReach = 0.2;

    // A row and one and a half marks beside it fix a view (eight numbers: five by the row), so that as many again are needed to speak for it and more.
    private const int BesideRow = 4;
    private const int BesideTwoRows = 3;
    private const double RowShare = 0.004;

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
        var (fits, log) = Fits(from, to, seed);
        var laid = ByHoles(first, second, saidMirrored, from, to, fits, log);
        // Where no holes speak for two sides, letters may for one.
        return laid.Ok || (saidMirrored ?? fits.Exists(fit => fit.Mirrored && Holds(fit))) ? laid : ByLettersToo(first, second, seed) ?? laid;
    }

    private static bool Holds(MatchFit fit) => fit.LogOdds < MostLogOdds && fit.Pairs.Count >= Least;

    private static Outcome<BoardMatch> ByHoles((string Name, PictureMarks Marks) first, (string Name, PictureMarks Marks) second, bool? saidMirrored, MarkField from, MarkField to, List<MatchFit> fits, double log)
    {
        var held = fits.Where(fit => fit.LogOdds < AlsoLogOdds && fit.Pairs.Count >= Least).ToList();
        if (held.Count == 0 || held[0].LogOdds > MostLogOdds) return Refused(first, second, from, to, fits, fits.Count == 0 ? 0 : fits.Max(fit => fit.Pairs.Count));
        if (saidMirrored is { } said && held.Find(fit => fit.Mirrored == said && Holds(fit)) is { } noted)
        {
            var follows = held.Find(fit => fit.Mirrored != said) is { } against && Overrules(first.Marks, second.Marks, from, against, noted) ? !said : said;
            held.RemoveAll(fit => fit.Mirrored != follows);
        }

        if (Doubtful(first, second, from, held[0], saidMirrored) is { } doubt) return doubt;
        var open = Open(from, to, held, fit => Looks(first.Marks, second.Marks, from, fit) > Alike);
        if (open.TrueForAll(fit => fit.Mirrored == open[0].Mirrored)) open = ByLooks(first.Marks, second.Marks, from, open);
        if (open.Count > 1) return new Fault(second.Name, "a board that lies one way only", FindingSentences.SeveralWays(first.Name, second.Name, [.. open.Select(fit => (fit.Pairs.Count, fit.Mirrored, Turn(fit, first.Marks)))]));
        return Answer(first, second, from, to, open[0].OnBoard(from, to, log), saidMirrored);
    }

    // Letters are the same in two pictures of one side, and those of a caption in any two: they count where the board looks alike between the holes that agree as well, and never for two sides.
    private static Outcome<BoardMatch>? ByLettersToo((string Name, PictureMarks Marks) first, (string Name, PictureMarks Marks) second, ulong seed)
    {
        var (holes, one, other) = (first.Marks.Marks.ToHashSet(), first.Marks.WithLetters, second.Marks.WithLetters);
        var (from, to) = (new MarkField(one), new MarkField(other));
        var (fits, log) = Fits(from, to, seed);
        var held = fits.Where(fit => !fit.Mirrored && Holds(fit)).ToList();
        if (held.Count == 0) return null;
        var open = ByLooks(one, other, from, Open(from, to, held, fit => Looks(one, other, from, fit) > Alike));
        if (open.Count > 1 || Looks(one, other, from, open[0], holes) < Alike) return null;
        return Answer((first.Name, one), (second.Name, other), from, to, open[0].OnBoard(from, to, log), saidMirrored: false);
    }

    private static (List<MatchFit> Fits, double LogTried) Fits(MarkField from, MarkField to, ulong seed)
    {
        var (seeds, tried) = MatchSeeds.Of(from, to, seed, Guesses);
        var log = Elementary.Log(Math.Max(1, tried));
        return (Distinct(from, to, [.. seeds.Select(guess => MatchFit.Grown(from, to, guess, log)).OfType<MatchFit>().Where(fit => MoreThanRows(from, fit)).OrderBy(fit => fit.LogOdds)]), log);
    }

    // A caption, a ruler or the table may be the same in both pictures while the board was turned over between them: what was noted of the
    // sides comes first, where a way that agrees with it is no accident, unless another is far less one, and makes the board look alike where it is as from one side.
    private static bool Overrules(PictureMarks first, PictureMarks second, MarkField from, MatchFit against, MatchFit noted) =>
        against.LogOdds < Math.Min(OverSides, FarLess * noted.LogOdds) && (against.Mirrored || Looks(first, second, from, against) > Alike);

    /// <summary>What speaks against the best way beside accident: the sides noted, and pictures of one side that do not look alike.</summary>
    private static Fault? Doubtful((string Name, PictureMarks Marks) first, (string Name, PictureMarks Marks) second, MarkField from, MatchFit best, bool? saidMirrored)
    {
        var against = saidMirrored is { } said && said != best.Mirrored;
        if (best.Mirrored) return against && best.LogOdds > OverSides ? Against(first, second, best) : null;
        if (saidMirrored == false) return null;
        var alike = Looks(first.Marks, second.Marks, from, best);
        if (against) return best.LogOdds > OverSides || alike < Alike ? Against(first, second, best) : null;
        return alike < Unlike ? new Fault(second.Name, "pictures of one side that look alike", FindingSentences.UnlikeSides(first.Name, second.Name, best.Pairs.Count)) : null;
    }

    private static Fault Against((string Name, PictureMarks Marks) first, (string Name, PictureMarks Marks) second, MatchFit fit) =>
        new(second.Name, "pictures that lie as their sides say", FindingSentences.OnlyAgainstSides(first.Name, second.Name, fit.Mirrored, fit.Pairs.Count));

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
    private static List<MatchFit> Open(MarkField from, MarkField to, List<MatchFit> held, Func<MatchFit, bool> alike)
    {
        var best = held[0];
        var mine = best.Pairs.Select(pair => pair.From).ToHashSet();
        return [best, .. held.Skip(1).Where(fit =>
        {
            // The other way round it need only be no accident, unless the one of both that would be of one side does look so, or does not.
            if (fit.Mirrored != best.Mirrored && fit.LogOdds < MostLogOdds) return fit.LogOdds < AlsoShare * best.LogOdds || alike(best.Mirrored ? fit : best) == best.Mirrored;
            if (fit.LogOdds >= AlsoShare * best.LogOdds) return false;
            var theirs = fit.Pairs.Select(pair => pair.From).ToHashSet();
            return Chance.Sign(mine.Count(mark => !theirs.Contains(mark)), theirs.Count(mark => !mine.Contains(mark))) > Decides && !(fit.Mirrored == best.Mirrored && Alone(from, to, best, fit));
        })];
    }

    // Marks without a twin that agree by the best way would all do so by accident if the other were the board's; and hardly any agree by that one.
    private static bool Alone(MarkField from, MarkField to, MatchFit best, MatchFit fit)
    {
        return Chance.LogTail(LonePairs.Of(from, to, best, fit), Math.Max(LeastByChance, best.ByChance)) < Elementary.Log(Decides) && LonePairs.Of(from, to, fit, best) <= MostLone;
    }

    // Two pictures of one side show the same parts: where one way alone makes them alike, it is that one.
    private static List<MatchFit> ByLooks(PictureMarks first, PictureMarks second, MarkField from, List<MatchFit> open)
    {
        var looks = open.ConvertAll(fit => (Fit: fit, Alike: Looks(first, second, from, fit)));
        var best = looks.MaxBy(look => look.Alike);
        return best.Alike > Alike && looks.TrueForAll(look => look.Fit == best.Fit || look.Alike < 0.5 * best.Alike) ? [best.Fit] : open;
    }

    private static bool MoreThanRows(MarkField from, MatchFit fit)
    {
        var beside = StraightRow.Beside([.. fit.Pairs.Select(pair => from.Marks[pair.From].At)], RowShare * from.Extent);
        return beside.Count >= BesideRow && StraightRow.Beside(beside, RowShare * from.Extent).Count >= BesideTwoRows;
    }

    // How alike the board looks by a way, between those of some marks that agree; 0 where these keep to a small part of what is there.
    private static double Looks(PictureMarks first, PictureMarks second, MarkField from, MatchFit fit, HashSet<FoundMark>? some = null)
    {
        List<FoundMark> agreeing = [.. fit.Pairs.Select(pair => from.Marks[pair.From]).Where(mark => some?.Contains(mark) != false)];
        return Scattered.Area(agreeing.Select(mark => mark.At)) < LeastReach * Scattered.Area(from.Marks.Select(mark => mark.At)) ? 0 : Likeness.Of(first.Sketch, second.Sketch, fit.Map, agreeing);
    }

    private static double Turn(MatchFit fit, PictureMarks first)
    {
        var j = new Projective("a", "b", fit.Map).JacobianAt(new(first.Frame.Width / 2.0, first.Frame.Height / 2.0));
        var flip = fit.Mirrored ? -1 : 1;
        // A mirrored map is a flip of x and then a turn.
        return Elementary.Atan2((flip * j.YX) - j.XY, (flip * j.XX) + j.YY) * 180 / Math.PI;
    }
}
