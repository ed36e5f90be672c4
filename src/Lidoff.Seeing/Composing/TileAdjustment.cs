using Lidoff.Numbers.Spreads;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Lays all tiles at once: a similarity each and, where that leaves more than it should, one bend of the lens and one slant of the camera
/// that all share. Least squares over every match of every pair; what stands above the board is let go.
/// </summary>
internal sealed class TileAdjustment
{
    private const int Shared = 5;
    private const int Rounds = 14;

    // What is usual on a bench: a lens that bends by a hundredth at the corner, a camera off by a degree or two.
    private static readonly double[] Usual = [0.02, 0.02, 0.02, 0.01, 0.01];
    private const double UsualScale = 0.01;

    // Half a pixel is what blocks are met by; below it a bent model would fit noise.
    private const double Good = 0.35;
    private const double Clearly = 0.8;

    private TileAdjustment(IReadOnlyList<LaidTile> tiles, double rms, bool bent, IReadOnlyList<TilePair> letGo) => (Tiles, Rms, Bent, LetGo) = (tiles, rms, bent, letGo);

    /// <summary>How each tile lies in the frame of the first.</summary>
    public IReadOnlyList<LaidTile> Tiles { get; }

    /// <summary>Root mean square of what is left at the matches that were kept, px.</summary>
    public double Rms { get; }

    /// <summary>True where lens and slant were fitted too.</summary>
    public bool Bent { get; }

    /// <summary>Pairs most of whose matches do not lie where all the others put them: what these two share stands up.</summary>
    public IReadOnlyList<TilePair> LetGo { get; }

    /// <summary>Lays them.</summary>
    public static TileAdjustment Of(IReadOnlyList<Tile> tiles, IReadOnlyList<TilePair> pairs)
    {
        var straight = Fit(tiles, pairs, bent: false);
        if (straight.Rms <= Good) return straight;
        var bent = Fit(tiles, pairs, bent: true);
        return bent.Rms < Clearly * straight.Rms ? bent : straight;
    }

    private static TileAdjustment Fit(IReadOnlyList<Tile> tiles, IReadOnlyList<TilePair> pairs, bool bent)
    {
        var start = TileGraph.Placed(0, [.. pairs]);
        var at = Enumerable.Range(0, tiles.Count).Select(k => start[k].Finer(tiles[0].Times)).ToArray();
        var bend = new double[Shared];
        var matches = pairs.SelectMany(pair => pair.Matches.Select(match => (
            pair.First, pair.Second, A: (X: match.ToX * tiles[0].Times, Y: match.ToY * tiles[0].Times), B: (X: match.X * tiles[0].Times, Y: match.Y * tiles[0].Times)))).ToList();
        var reach = 12.0 * tiles[0].Times;
        var rms = 0.0;
        var own = bent ? Shared : 0;
        for (var round = 0; round < Rounds; round++)
        {
            var bends = tiles.Select(tile => new TileBend(tile.Width, tile.Height, [.. bend])).ToList();
            var equations = new NormalEquations((4 * (tiles.Count - 1)) + own);
            var left = new List<double>();
            (double square, int kept) = (0, 0);
            foreach (var (i, j, a, b) in matches)
            {
                var (pa, pb) = (bends[i].Straight(a.X, a.Y), bends[j].Straight(b.X, b.Y));
                var ((ax, ay), (bx, by)) = (at[i].Apply(pa.X, pa.Y), at[j].Apply(pb.X, pb.Y));
                var (rx, ry) = (ax - bx, ay - by);
                var away = Math.Sqrt((rx * rx) + (ry * ry));
                left.Add(away);
                if (away >= reach) continue;
                var weight = (1 - (away / reach * (away / reach))) * (1 - (away / reach * (away / reach)));
                square += away * away;
                kept++;
                var (across, down) = (new List<(int, double)>(), new List<(int, double)>());
                void Own(int tile, double x, double y, double sign)
                {
                    if (tile == 0) return;
                    var from = 4 * (tile - 1);
                    across.AddRange([(from, sign * x), (from + 1, -sign * y), (from + 2, sign)]);
                    down.AddRange([(from, sign * y), (from + 1, sign * x), (from + 3, sign)]);
                }

                Own(i, pa.X, pa.Y, 1);
                Own(j, pb.X, pb.Y, -1);
                for (var k = 0; k < own; k++)
                {
                    var ((ux, uy), (vx, vy)) = (bends[i].Slope(a.X, a.Y, k), bends[j].Slope(b.X, b.Y, k));
                    across.Add(((4 * (tiles.Count - 1)) + k, (at[i].A * ux) - (at[i].B * uy) - (at[j].A * vx) + (at[j].B * vy)));
                    down.Add(((4 * (tiles.Count - 1)) + k, (at[i].B * ux) + (at[i].A * uy) - (at[j].B * vx) - (at[j].A * vy)));
                }

                equations.Add([.. across], -rx, weight);
                equations.Add([.. down], -ry, weight);
            }

            // A quarter of a square pixel is what a match is worth against what is usual.
            for (var k = 0; k < own; k++) equations.Add([((4 * (tiles.Count - 1)) + k, 1)], -bend[k], 0.25 / (Usual[k] * Usual[k]));
            for (var tile = 1; tile < tiles.Count; tile++)
            {
                var (from, scale) = (4 * (tile - 1), at[tile].Scale);
                equations.Add([(from, at[tile].A / scale), (from + 1, at[tile].B / scale)], 1 - scale, 0.25 / (UsualScale * UsualScale));
            }

            var step = equations.Solve();
            for (var tile = 1; tile < tiles.Count; tile++)
            {
                var from = 4 * (tile - 1);
                at[tile] = new(at[tile].A + step[from], at[tile].B + step[from + 1], at[tile].X + step[from + 2], at[tile].Y + step[from + 3]);
            }

            for (var k = 0; k < own; k++) bend[k] += step[(4 * (tiles.Count - 1)) + k];
            rms = kept == 0 ? 0 : Math.Sqrt(square / kept);
            reach = Math.Max(1.5, Math.Min(reach, 4 * Statistics.Median(left)));
        }

        List<LaidTile> laid = [.. tiles.Select((tile, k) => new LaidTile(tile, at[k], new(tile.Width, tile.Height, bend)))];
        return new(laid, rms, bent, [.. pairs.Where(pair => 2 * pair.Matches.Count(match => Away(match, laid[pair.First], laid[pair.Second]) < reach) < pair.Matches.Count)]);
    }

    private static double Away(PointMatch match, LaidTile first, LaidTile second)
    {
        var times = first.Tile.Times;
        var ((ax, ay), (bx, by)) = (first.To(match.ToX * times, match.ToY * times), second.To(match.X * times, match.Y * times));
        return Math.Sqrt(((ax - bx) * (ax - bx)) + ((ay - by) * (ay - by)));
    }
}
