using Lidoff.Evidence.Pictures;
using Lidoff.Numbers;

namespace Lidoff.Seeing.Boards.Finding.Matching;

/// <summary>
/// First guesses by consensus: three marks of the first picture, taken at random from a seed, against every three of the second that make
/// nearly the same triangle, either way round. Guesses that put the board in about the same place count as one; the best of each place is kept.
/// </summary>
internal static class MatchSeeds
{
    private const int Triangles = 360;

    // Of so many marks that stand out most; half of them may be missing in the other picture.
    private const int Marks = 110;

    // Two views of 15° each, leaning across one another: 1/cos² 15° = 1.07; and what the middles are off.
    private const double MostStretch = 1.16;

    // A guess through three marks misses others by what a slant bends: at 15° some 1.2 % of the board.
    private const double Share = 0.013;

    /// <summary>The guesses, best first.</summary>
    public static (List<MatchSeed> Seeds, long Tried) Of(MarkField first, MarkField second, ulong seed, int most)
    {
        var (from, to) = (first.Marks.Take(Marks).ToArray(), second.Marks.Take(Marks).ToArray());
        second.Paint(Share);
        var random = new SeedRandom(seed);
        var best = new Dictionary<(bool, int, int, int, int), MatchSeed>();
        var tried = 0L;
        var middle = new PicturePoint(from.Average(mark => mark.At.X), from.Average(mark => mark.At.Y));
        for (var round = 0; round < Triangles; round++)
        {
            if (Triangle(from, first.Extent, random) is not var (i, j, k)) continue;
            var (a, b, c) = (from[i], from[j], from[k]);
            var side = a.At.DistanceTo(b.At);
            foreach (var p in to)
            {
                foreach (var q in to)
                {
                    if (ReferenceEquals(p, q)) continue;
                    var scale = p.At.DistanceTo(q.At) / side;
                    if (!MarkField.Alike(a, p, scale) || !MarkField.Alike(b, q, scale)) continue;
                    tried += Third(first, second, from, to, (a, b, c), (p, q), scale, middle, best);
                }
            }
        }

        return ([.. best.OrderByDescending(each => each.Value.Near).ThenBy(each => each.Key).Select(each => each.Value).Take(most)], tried);
    }

    private static int Third(
        MarkField first, MarkField second, FoundMark[] from, FoundMark[] to, (FoundMark A, FoundMark B, FoundMark C) triangle, (FoundMark P, FoundMark Q) pair, double scale, PicturePoint middle,
        Dictionary<(bool, int, int, int, int), MatchSeed> best)
    {
        var (a, b, c) = (triangle.A.At, triangle.B.At, triangle.C.At);
        var (p, q) = (pair.P.At, pair.Q.At);
        // The third corner in units of the first side: along it, and to its left.
        var (ux, uy, side) = (b.X - a.X, b.Y - a.Y, ((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
        var along = (((c.X - a.X) * ux) + ((c.Y - a.Y) * uy)) / side;
        var across = (((c.Y - a.Y) * ux) - ((c.X - a.X) * uy)) / side;
        var (vx, vy) = (q.X - p.X, q.Y - p.Y);
        var reach = 0.1 * scale * Math.Max(Math.Sqrt(side), a.DistanceTo(c));
        var tried = 0;
        foreach (var turned in (ReadOnlySpan<int>)[1, -1])
        {
            var (x, y) = (p.X + (along * vx) - (turned * across * vy), p.Y + (along * vy) + (turned * across * vx));
            foreach (var r in to)
            {
                var (dx, dy) = (r.At.X - x, r.At.Y - y);
                if (dx > reach || dx < -reach || dy > reach || dy < -reach || (dx * dx) + (dy * dy) > reach * reach) continue;
                if (ReferenceEquals(r, pair.P) || ReferenceEquals(r, pair.Q) || !MarkField.Alike(triangle.C, r, scale)) continue;
                if (MatchSeed.Through(a, b, c, p, q, r.At) is not { } guess || !(guess.Stretch < MostStretch)) continue;
                tried++;
                var near = 0;
                foreach (var mark in from) if (second.Near((guess.A * mark.At.X) + (guess.B * mark.At.Y) + guess.C, (guess.D * mark.At.X) + (guess.E * mark.At.Y) + guess.F)) near++;
                if (near < 6) continue;
                var key = Key(guess, guess.Map(middle), second.Extent);
                if (!best.TryGetValue(key, out var before) || before.Near < near) best[key] = guess with { Near = near };
            }
        }

        return tried;
    }

    private static (bool, int, int, int, int) Key(MatchSeed guess, PicturePoint middle, double extent) => (
        guess.Mirrored,
        (int)Math.Floor(Elementary.Atan2(guess.D, guess.A) * 18 / Math.PI),
        (int)Math.Floor(Elementary.Log(guess.Scale) / 0.12),
        (int)Math.Floor(middle.X / extent * 14),
        (int)Math.Floor(middle.Y / extent * 14));

    private static (int I, int J, int K)? Triangle(FoundMark[] from, double extent, SeedRandom random)
    {
        for (var attempt = 0; attempt < 40; attempt++)
        {
            var (i, j, k) = (random.Below(from.Length), random.Below(from.Length), random.Below(from.Length));
            if (i == j || j == k || i == k) continue;
            var (a, b, c) = (from[i].At, from[j].At, from[k].At);
            var (ab, bc, ca) = (a.DistanceTo(b), b.DistanceTo(c), c.DistanceTo(a));
            var (least, most) = (Math.Min(ab, Math.Min(bc, ca)), Math.Max(ab, Math.Max(bc, ca)));
            var area = Math.Abs(((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X)));
            if (least > 0.1 * extent && most < 0.8 * extent && area > 0.25 * most * most) return (i, j, k);
        }

        return null;
    }
}
