using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;

namespace Lidoff.Seeing.Boards;

/// <summary>The equations that tie pictures and landmarks together, and which of their numbers are free.</summary>
internal sealed class BoardProblem
{
    private readonly int[] free;
    private readonly int views;

    /// <param name="views">How many pictures.</param>
    /// <param name="landmarks">How many landmarks.</param>
    /// <param name="fixedView">The picture whose shift and turn are the board's; null where known places are.</param>
    /// <param name="scaleFree">False where nothing tells a length, so that this picture's scale stands for one.</param>
    public BoardProblem(int views, int landmarks, int? fixedView, bool scaleFree)
    {
        this.views = views;
        free = new int[(views * BoardView.Count) + (2 * landmarks)];
        for (var i = 0; i < free.Length; i++)
        {
            var coefficient = i - ((fixedView ?? -1) * BoardView.Count);
            var held = fixedView is not null && coefficient is >= 0 and < 4 && (coefficient != 2 || !scaleFree);
            free[i] = held ? -1 : Count++;
        }
    }

    /// <summary>How many numbers are free.</summary>
    public int Count { get; }

    /// <summary>Landmarks as seen.</summary>
    public IReadOnlyList<BoardSighting> Sightings { get; init; } = [];

    /// <summary>Known lengths.</summary>
    public IReadOnlyList<BoardReference> References { get; init; } = [];

    /// <summary>Landmarks of known place.</summary>
    public IReadOnlyList<(int Landmark, KnownPlace Place)> Known { get; init; } = [];

    /// <summary>Number of a picture's coefficient among the free ones; -1 where it is held.</summary>
    public int Of(int view, int coefficient) => free[(view * BoardView.Count) + coefficient];

    /// <summary>Every equation.</summary>
    public IEnumerable<BoardRow> Rows(BoardState state)
    {
        foreach (var sighting in Sightings)
        {
            var (x, y) = Rows(sighting, state);
            yield return x;
            yield return y;
        }

        foreach (var reference in References) yield return Row(reference, state);
        foreach (var (landmark, place) in Known)
        {
            yield return new([Place(landmark, 0)], [1 / place.U], (place.X - state.Places[landmark].X) / place.U);
            yield return new([Place(landmark, 1)], [1 / place.U], (place.Y - state.Places[landmark].Y) / place.U);
        }

        for (var view = 0; view < state.Views.Count; view++)
        {
            for (var i = 0; i < BoardView.Count; i++)
            {
                if (BoardView.SpreadOf(i) is { } spread) yield return new([Of(view, i)], [1 / spread], -state.Views[view][i] / spread);
            }
        }
    }

    /// <summary>The two equations of a sighting.</summary>
    public (BoardRow X, BoardRow Y) Rows(BoardSighting sighting, BoardState state)
    {
        var (view, place) = (state.Views[sighting.View], state.Places[sighting.Landmark]);
        var (byView, byPoint) = view.Slopes(place);
        var shown = view.Show(place);
        return (
            Row(sighting, [byView[0, 0], byView[0, 1], byView[0, 2], byView[0, 3], byView[0, 4], byView[0, 5], byView[0, 6], byView[0, 7], byPoint.XX, byPoint.XY], sighting.At.X - shown.X),
            Row(sighting, [byView[1, 0], byView[1, 1], byView[1, 2], byView[1, 3], byView[1, 4], byView[1, 5], byView[1, 6], byView[1, 7], byPoint.YX, byPoint.YY], sighting.At.Y - shown.Y));
    }

    /// <summary>The equation of a known length: logarithms, so that its relative uncertainty is its weight.</summary>
    public BoardRow Row(BoardReference reference, BoardState state)
    {
        var view = state.Views[reference.View];
        var u = reference.RelativeU;
        var (length, slopes) = BoardSlopes.Length(view, reference.From, reference.To);
        return Free([.. Enumerable.Range(0, BoardView.Count).Select(i => Of(reference.View, i))], [.. slopes.Select(slope => slope / length / u)], Elementary.Log(reference.Length.LengthMm / length) / u);
    }

    /// <summary>The state after a step of the free numbers.</summary>
    public BoardState Moved(BoardState state, double[] step, double times)
    {
        double By(int index) => index < 0 ? 0 : times * step[index];
        return new(
            [.. state.Views.Select((view, v) => view.Moved(i => By(Of(v, i))))],
            [.. state.Places.Select((place, l) => new PicturePoint(place.X + By(Place(l, 0)), place.Y + By(Place(l, 1))))]);
    }

    /// <summary>Number of a landmark's place along x (0) or y (1) among the free ones.</summary>
    public int Place(int landmark, int axis) => free[(views * BoardView.Count) + (2 * landmark) + axis];

    private BoardRow Row(BoardSighting sighting, double[] slopes, double rest) => Free(
        [.. Enumerable.Range(0, BoardView.Count).Select(i => Of(sighting.View, i)), Place(sighting.Landmark, 0), Place(sighting.Landmark, 1)],
        [.. slopes.Select(slope => slope / sighting.UPx)],
        rest / sighting.UPx);

    private static BoardRow Free(int[] index, double[] slope, double rest) =>
        new([.. index.Where(i => i >= 0)], [.. slope.Where((_, k) => index[k] >= 0)], rest);
}
