namespace Lidoff.Seeing.Boards;

/// <summary>All laid pictures fitted together, and what had to be taken out of them.</summary>
internal sealed class BoardJoint
{
    // Two explanations nearer than e^3 (20 : 1) are not told apart.
    private const double Apart = 6;

    // So many of the worst are tried for themselves; the worst by slopes is nearly always among the first two.
    private const int Tried = 6;

    private readonly BoardStart start;
    private readonly int? held;
    private readonly IReadOnlyList<KnownPlace> known;
    private readonly List<string> names;
    private readonly List<BoardSighting> sightings = [];
    private readonly List<BoardReference> references = [];
    private readonly List<(BoardSighting Sighting, IReadOnlyList<int> OrViews)> blunders = [];
    private readonly List<BoardReference> quarrels = [];

    private BoardJoint(BoardStart start, IReadOnlyList<KnownPlace> known, PictureToLay? seed)
    {
        (this.start, this.known) = (start, known);
        names = [.. start.Places.Keys.Order(StringComparer.Ordinal)];
        for (var view = 0; view < start.Laid.Count; view++)
        {
            var picture = start.Laid[view].Picture;
            if (picture == seed) held = view;
            sightings.AddRange(picture.Landmarks.Select(landmark => new BoardSighting(view, names.IndexOf(landmark.Name), landmark.At, landmark.UPx)));
            references.AddRange(picture.OnBoard.Select(reference => new BoardReference(view, reference)));
        }

        Solution = Solve();
    }

    /// <summary>The best state without what was taken out.</summary>
    public BoardSolution Solution { get; private set; }

    /// <summary>Landmarks in the order of their numbers.</summary>
    public IReadOnlyList<string> Names => names;

    /// <summary>The number of a landmark.</summary>
    public int Number(string name) => names.IndexOf(name);

    /// <summary>Pictures in the order of their numbers.</summary>
    public IReadOnlyList<PictureToLay> Pictures => [.. start.Laid.Select(each => each.Picture)];

    /// <summary>Sightings that do not fit, each with other pictures that may have it wrong instead.</summary>
    public IReadOnlyList<(BoardSighting Sighting, IReadOnlyList<int> OrViews)> Blunders => blunders;

    /// <summary>Known lengths that the board contradicts.</summary>
    public IReadOnlyList<BoardReference> Quarrels => quarrels;

    /// <summary>A picture that cannot be reconciled; null where all is well.</summary>
    public PictureToLay? Misfit { get; private set; }

    /// <summary>True when something tells a length.</summary>
    public bool ScaleKnown => references.Count > 0 || held is null;

    /// <summary>Fits, and takes out what does not fit, worst first.</summary>
    public static BoardJoint Of(BoardStart start, IReadOnlyList<KnownPlace> known, PictureToLay? seed)
    {
        var joint = new BoardJoint(start, known, seed);
        while (joint.Misfit is null && joint.TakeOut())
        {
        }

        return joint;
    }

    private bool TakeOut()
    {
        var byReference = BoardBlunders.ReferenceFalls(Solution).Select((fall, i) => (Fall: fall / BoardBlunders.ReferenceLimit, Reference: (BoardReference?)references[i], Sighting: (BoardSighting?)null));
        var bySighting = BoardBlunders.Falls(Solution).Select((fall, i) => (Fall: fall / BoardBlunders.Limit, Reference: (BoardReference?)null, Sighting: (BoardSighting?)sightings[i]));
        var suspects = byReference.Concat(bySighting).Where(suspect => suspect.Fall > 1).OrderByDescending(suspect => suspect.Fall).ToList();
        if (suspects.Count == 0) return false;
        var trials = suspects.Take(Tried).Select(suspect => (suspect.Reference, suspect.Sighting, Without: Without(suspect.Reference, suspect.Sighting))).ToList();
        // Where two pictures accuse each other, the one that carries the board is believed.
        var least = trials.Min(trial => trial.Without.Cost);
        var best = trials.Where(trial => trial.Without.Cost <= least + 1e-6 + (1e-6 * least)).OrderBy(trial => (trial.Reference?.View ?? trial.Sighting!.View) == held).First();
        if (best.Reference is { } reference)
        {
            references.Remove(reference);
            quarrels.Add(reference);
        }
        else
        {
            var worst = best.Sighting!;
            var rivals = trials.Where(trial => trial != best && trial.Without.Cost < least + Apart).ToList();
            var enough = sightings.Count(each => each.View == worst.View) >= 5 || sightings.Count(each => each.Landmark == worst.Landmark) >= 3;
            if (!enough || rivals.Exists(rival => rival.Sighting is { } other && other.Landmark != worst.Landmark))
            {
                var sums = suspects.Where(suspect => suspect.Sighting is { } other && other.View != held).GroupBy(suspect => suspect.Sighting!.View).Select(group => (View: group.Key, Sum: group.Sum(each => each.Fall))).ToList();
                if (sums.Count == 0) return false;
                Misfit = start.Laid[sums.MaxBy(sum => sum.Sum).View].Picture;
                return false;
            }

            sightings.Remove(worst);
            blunders.Add((worst, [.. rivals.Where(rival => rival.Sighting is not null).Select(rival => rival.Sighting!.View).Distinct().Order()]));
        }

        Solution = Solve();
        return true;
    }

    private BoardSolution Solve() => BoardSolution.Of(Problem(sightings, references), new([.. start.Laid.Select(each => each.View)], [.. names.Select(name => start.Places[name].At)]));

    private BoardSolution Without(BoardReference? reference, BoardSighting? sighting) =>
        BoardSolution.Of(Problem([.. sightings.Where(each => each != sighting)], [.. references.Where(each => each != reference)]), Solution.State);

    private BoardProblem Problem(List<BoardSighting> seen, List<BoardReference> lengths) => new(start.Laid.Count, names.Count, held, lengths.Count > 0)
    {
        Sightings = [.. seen],
        References = [.. lengths],
        Known = [.. known.Where(place => start.Places.ContainsKey(place.Name)).Select(place => (names.IndexOf(place.Name), place))],
    };
}
