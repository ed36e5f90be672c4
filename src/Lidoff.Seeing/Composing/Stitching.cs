using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>One board out of tiles: how each pair lies, then all tiles at once, then their light, then the picture.</summary>
internal static class Stitching
{
    private const double WorkPixels = 1_000_000;

    // Tiles and result are held as they are, 3 bytes a pixel: 750 MB at most.
    private const long MostTilePixels = 150_000_000;
    private const long MostPixels = 100_000_000;

    public static Outcome<Composition> Make(ComposeOrder order, IJobReport report)
    {
        var pictures = order.Pictures;
        if (pictures.Sum(each => (long)each.Header.Width * each.Header.Height) is var all && all > MostTilePixels) return new Fault("pictures", "fewer or smaller tiles", ComposingSentences.TilesTooLarge(all, MostTilePixels));
        var times = Math.Max(1, Math.Sqrt(pictures.Max(each => (double)each.Header.Width * each.Header.Height) / WorkPixels));
        List<Tile> tiles = [];
        try
        {
            foreach (var picture in pictures)
            {
                report.Stop.ThrowIfCancellationRequested();
                report.Say(tiles.Count, pictures.Count * 4, ComposingSentences.Features(picture.Name));
                tiles.Add(Tile.Open(tiles.Count, picture, times));
            }

            return Put(order, tiles, report);
        }
        finally
        {
            tiles.ForEach(tile => tile.Dispose());
        }
    }

    private static Outcome<Composition> Put(ComposeOrder order, List<Tile> tiles, IJobReport report)
    {
        var graph = new TileGraph(tiles, Pairs(tiles, report));
        var (pairs, said) = graph.Settle();
        var laid = TileAdjustment.Of(tiles, pairs);
        var boxes = laid.Tiles.Select(tile => tile.Box()).ToList();
        var (left, top) = ((int)Math.Floor(boxes.Min(box => box.Left)), (int)Math.Floor(boxes.Min(box => box.Top)));
        var size = new Size((int)Math.Ceiling(boxes.Max(box => box.Right)) - left, (int)Math.Ceiling(boxes.Max(box => box.Bottom)) - top);
        if ((long)size.Width * size.Height > MostPixels) return new Fault("pictures", "fewer or smaller tiles", ComposingSentences.BoardTooLarge(size.Width, size.Height, MostPixels));
        TileShading.Even(laid.Tiles);
        using var sheet = TileBlending.Blend(laid.Tiles, left, top, size, report);
        var loop = graph.Loop(laid.LetGo) * tiles[0].Times;
        // Lens and slant move places of the first tile too: up to a thousandth of its size its scale still holds.
        var own = laid.Bent && laid.Tiles[0].Bend.Most > 0.001 * tiles[0].Width;
        return new Composition
        {
            Picture = Sheets.Png(sheet),
            Inputs = [.. tiles.Select(tile => tile.Source.Sha256)],
            Settings = laid.Bent ? ComposingSentences.StitchedBent : ComposingSentences.StitchedStraight,
            Program = VisionLibrary.Versions(),
            FirstAt = own ? null : (-left, -top),
            RestPx = laid.Rms,
            LoopPx = loop,
            Says = [ComposingSentences.Stitched(tiles.Count, pairs.Count - laid.LetGo.Count, laid.Rms, loop, order.UmPerPx), .. said, .. laid.LetGo.Select(pair => ComposingSentences.StandsUp(tiles[pair.First].Source.Name, tiles[pair.Second].Source.Name)), .. own ? [ComposingSentences.ScaleAnew] : Array.Empty<string>()],
        };
    }

    private static List<TilePair> Pairs(List<Tile> tiles, IJobReport report)
    {
        var pairs = new List<TilePair>();
        var (done, all) = (0, tiles.Count * (tiles.Count - 1) / 2);
        for (var i = 0; i < tiles.Count; i++)
        {
            for (var j = i + 1; j < tiles.Count; j++)
            {
                report.Stop.ThrowIfCancellationRequested();
                report.Say(all + done++, all * 4, ComposingSentences.Pairing(tiles[i].Source.Name, tiles[j].Source.Name));
                if (PairFinder.Of(tiles[i], tiles[j]) is { } pair) pairs.Add(pair);
            }
        }

        return pairs;
    }
}
