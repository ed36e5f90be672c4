using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>A guess grown into a view that as many marks as possible agree with, and how likely that is by accident.</summary>
internal sealed class MatchFit
{
    // Shares of the extent within which marks agree, on the way and in the end: sharp lenses need the least, bent ones the most.
    private static readonly double[] Narrowing = [0.025, 0.016, 0.01, 0.006, 0.004];
    private static readonly double[] Ends = [0.004, 0.0025, 0.0015, 0.001, 0.0007];

    // The tightest share is taken that is still this much as far from accident: what agrees by it is surer.
    private const double Tightest = 0.7;

    // A twentieth of a millimetre on a board 50 mm across.
    private const double FlatShare = 0.001;

    // A view goes through any four.
    private const int Free = 4;
    private const double MostStretch = 1.2;

    private MatchFit(Matrix3 map, IReadOnlyList<(int From, int To)> pairs, double tolerance, double byChance, double logOdds) =>
        (Map, Pairs, Tolerance, ByChance, LogOdds) = (map, pairs, tolerance, byChance, logOdds);

    public Matrix3 Map { get; }

    public IReadOnlyList<(int From, int To)> Pairs { get; }

    /// <summary>Within which they agree, px of the second picture.</summary>
    public double Tolerance { get; }

    /// <summary>Marks that would agree by accident, on average.</summary>
    public double ByChance { get; }

    /// <summary>Natural logarithm of how many matches as good as this accident gives, among all tried.</summary>
    public double LogOdds { get; }

    public bool Mirrored => new Projective("a", "b", Map).JacobianAt(default).Determinant < 0;

    /// <summary>Grows a guess; null where it comes to nothing.</summary>
    public static MatchFit? Grown(MarkField first, MarkField second, MatchSeed seed, double logTried)
    {
        var map = seed.Matrix;
        foreach (var share in Narrowing)
        {
            var near = Agreeing(first, second, map, share * second.Extent);
            if (ViewFit.Of(Places(first, second, near, map), map, first.Extent, 1.6 * share * second.Extent) is not { } next) return null;
            map = next;
        }

        var ends = new List<MatchFit>();
        foreach (var share in Ends)
        {
            var tolerance = share * second.Extent;
            var pairs = Agreeing(first, second, map, tolerance);
            if (pairs.Count < Free + 2 || ViewFit.Of(Places(first, second, pairs, map), map, first.Extent, 1.6 * tolerance) is not { } next || !Plausible(next, first, pairs)) break;
            map = next;
            pairs = Agreeing(first, second, map, tolerance);
            var mean = ByAccident(first, second, map, tolerance);
            var log = logTried + Chance.LogTail(pairs.Count - Free, mean);
            ends.Add(new(map, pairs, tolerance, mean, log));
        }

        return ends.LastOrDefault(end => end.LogOdds <= Tightest * ends.Min(each => each.LogOdds)) ?? ends.MinBy(end => end.LogOdds);
    }

    /// <summary>The board's own plane, where two pictures of one side agree in what stands up as well; itself of two sides.</summary>
    public MatchFit OnBoard(MarkField first, MarkField second, double logTried) => Mirrored ? this : Flat(first, second, this, logTried) ?? this;

    private static MatchFit? Flat(MarkField first, MarkField second, MatchFit loose, double logTried)
    {
        var tolerance = FlatShare * second.Extent;
        var map = FlatPlane.Of(first, second, Agreeing(first, second, loose.Map, 8 * tolerance), loose.Map, tolerance);
        for (var round = 0; round < 3; round++)
        {
            if (ViewFit.Of(Places(first, second, Agreeing(first, second, map, 1.5 * tolerance), map), map, first.Extent, 2 * tolerance) is not { } next) return null;
            map = next;
        }

        var pairs = Agreeing(first, second, map, tolerance);
        if (pairs.Count < Free + 2 || !Plausible(map, first, pairs)) return null;
        var mean = ByAccident(first, second, map, tolerance);
        var log = logTried + Chance.LogTail(pairs.Count - Free, mean);
        return log <= 0.3 * loose.LogOdds ? new(map, pairs, tolerance, mean, log) : null;
    }

    /// <summary>Marks that agree by a map: each with its nearest, both ways round.</summary>
    public static List<(int From, int To)> Agreeing(MarkField first, MarkField second, Matrix3 map, double tolerance)
    {
        var view = new Projective("a", "b", map);
        var scale = Scale(view, first);
        var shown = first.Marks.Select(mark => view.Map(mark.At)).ToArray();
        var pairs = new List<(int From, int To, double Away)>();
        for (var i = 0; i < shown.Length; i++)
        {
            for (var j = 0; j < second.Marks.Count; j++)
            {
                var at = second.Marks[j].At;
                if (Math.Abs(at.X - shown[i].X) > tolerance || Math.Abs(at.Y - shown[i].Y) > tolerance) continue;
                var away = at.DistanceTo(shown[i]);
                if (away <= tolerance && MarkField.Alike(first.Marks[i], second.Marks[j], scale)) pairs.Add((i, j, away));
            }
        }

        var (takenFrom, takenTo, kept) = (new HashSet<int>(), new HashSet<int>(), new List<(int From, int To)>());
        foreach (var (i, j, _) in pairs.OrderBy(pair => pair.Away).ThenBy(pair => pair.From).ThenBy(pair => pair.To))
        {
            if (takenFrom.Contains(i) || takenTo.Contains(j)) continue;
            takenFrom.Add(i);
            takenTo.Add(j);
            kept.Add((i, j));
        }

        return [.. kept.Order()];
    }

    private static double Scale(Projective view, MarkField first)
    {
        var at = new PicturePoint(first.Frame.Width / 2.0, first.Frame.Height / 2.0);
        return Math.Sqrt(Math.Abs(view.JacobianAt(at).Determinant));
    }

    private static List<(PicturePoint, PicturePoint, double)> Places(MarkField first, MarkField second, List<(int From, int To)> pairs, Matrix3 map)
    {
        var scale = Scale(new("a", "b", map), first);
        return pairs.ConvertAll(pair =>
        {
            var (a, b) = (first.Marks[pair.From], second.Marks[pair.To]);
            return (a.At, b.At, Math.Sqrt((a.UPx * a.UPx * scale * scale) + (b.UPx * b.UPx)));
        });
    }

    // What the neighbourhood of each place holds, six times as wide: marks stand in rows and heaps, so that an even spread would call accidents rare.
    private static double ByAccident(MarkField first, MarkField second, Matrix3 map, double tolerance)
    {
        const double wide = 6;
        var view = new Projective("a", "b", map);
        var scale = Scale(view, first);
        var even = Math.PI * tolerance * tolerance / (0.5 * second.Extent * second.Extent);
        var mean = 0.0;
        foreach (var mark in first.Marks)
        {
            var at = view.Map(mark.At);
            if (!second.Holds(at)) continue;
            var (near, alike) = (0, 0);
            foreach (var other in second.Marks)
            {
                if (!MarkField.Alike(mark, other, scale)) continue;
                alike++;
                var away = other.At.DistanceTo(at);
                if (away > tolerance && away <= wide * tolerance) near++;
            }

            mean += Math.Min(1, Math.Max(near / ((wide * wide) - 1), alike * even));
        }

        return mean;
    }

    private static bool Plausible(Matrix3 map, MarkField first, List<(int From, int To)> pairs)
    {
        var view = new Projective("a", "b", map);
        var (least, most, sign) = (double.PositiveInfinity, 0.0, 0);
        foreach (var (from, _) in pairs)
        {
            var j = view.JacobianAt(first.Marks[from].At);
            var one = new MatchSeed(j.XX, j.XY, 0, j.YX, j.YY, 0, 0);
            if (!(one.Stretch < MostStretch)) return false;
            (least, most, sign) = (Math.Min(least, one.Scale), Math.Max(most, one.Scale), sign + (one.Mirrored ? -1 : 1));
        }

        // A slant of 15° seen twice, near by, changes the scale by a quarter from edge to edge.
        return most < 1.35 * least && Math.Abs(sign) == pairs.Count;
    }
}
