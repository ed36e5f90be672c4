using Lidoff.Evidence.Pictures;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>
/// What tells two ways apart by which a board fits: a row of holes fits one period on as well, and a symmetric board turned, since a hole that agrees one way has a like one where the other
/// way asks for it. Marks without such a twin in either picture agree one way alone, and by accident only if that way is wrong.
/// </summary>
internal static class LonePairs
{
    // Twins are looked for so many tolerances wide: a way that is wrong does not fit rows to their ends.
    private const double Wide = 3;

    /// <summary>How many pairs of a way have no twin by another.</summary>
    public static int Of(MarkField first, MarkField second, MatchFit fit, MatchFit other)
    {
        var (by, scale, reach) = (new Projective("a", "b", other.Map), Scale(first, fit), Wide * Math.Max(fit.Tolerance, other.Tolerance));
        var back = by.Inverse();
        return fit.Pairs.Count(pair =>
        {
            var (one, two) = (first.Marks[pair.From], second.Marks[pair.To]);
            return !Holds(second, by.Map(one.At), two, reach) && !Holds(first, back.Map(two.At), one, reach / scale);
        });
    }

    private static bool Holds(MarkField field, PicturePoint at, FoundMark like, double reach) => field.Marks.Any(mark => mark.At.DistanceTo(at) < reach && MarkField.Alike(mark, like, 1));

    private static double Scale(MarkField first, MatchFit fit) =>
        Math.Sqrt(Math.Abs(new Projective("a", "b", fit.Map).JacobianAt(new(first.Frame.Width / 2.0, first.Frame.Height / 2.0)).Determinant));
}
