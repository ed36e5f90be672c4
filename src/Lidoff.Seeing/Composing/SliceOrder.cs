using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Whether slices come in the order of their focus. In the right order a place grows sharp once and then goes soft: what its sharpness
/// rises again after it fell, as a share of its greatest, is the fault of an order, averaged over all places that come into focus at all.
/// </summary>
internal static class SliceOrder
{
    private const double WorkPixels = 600_000;
    private const int Cell = 16;

    // A place counts where its sharpest slice has two and a half times the edges of its softest.
    private const double LeastGain = 2.5;
    private const int FewestPlaces = 12;
    private const int MostPlaces = 300;
    private const int Starts = 4;

    // Measured on rendered stacks of eleven slices: 0.006 in the right order, 0.015 with one slice three places off, 0.043 with two
    // neighbours swapped, 0.3 in no order at all. Another order is believed where it takes away nearly half of the fault.
    private const double Bearable = 0.12;
    private const double Clearly = 0.6;
    private const double Noise = 0.003;

    /// <summary>The slices in order of focus, and whether that is another order than the given one.</summary>
    public static (int[] Order, bool Repaired) Of(IReadOnlyList<SourcePicture> pictures, IJobReport report)
    {
        var places = Sharpness(pictures, report);
        if (places.Count < FewestPlaces) throw new RefusedException(new Fault("pictures", "slices of different focus", ComposingSentences.NothingInFocus(places.Count)));
        var given = Enumerable.Range(0, pictures.Count).ToArray();
        var best = Best(places, given, report);
        var (fault, least) = (Fault(places, given), Fault(places, best));
        if (least >= Clearly * fault || fault - least < Noise) (best, least) = (given, fault);
        if (least > Bearable) throw new RefusedException(new Fault("pictures", "slices in the order of their focus", ComposingSentences.NoOrder(Turns(places, given))));
        return (best, !ReferenceEquals(best, given));
    }

    /// <summary>
    /// Share of its greatest sharpness by which a place rises again after it fell, averaged over the better half of the places: the edge of
    /// a tall part over the board is sharp twice in any order.
    /// </summary>
    public static double Fault(IReadOnlyList<double[]> places, int[] order)
    {
        var faults = new double[places.Count];
        for (var i = 0; i < faults.Length; i++)
        {
            var place = places[i];
            var top = 0;
            for (var k = 1; k < order.Length; k++) if (place[order[k]] > place[order[top]]) top = k;
            for (var k = 1; k < order.Length; k++)
            {
                var step = place[order[k]] - place[order[k - 1]];
                faults[i] += Math.Max(0, k <= top ? -step : step);
            }
        }

        Array.Sort(faults);
        return faults.Take((faults.Length + 1) / 2).Average();
    }

    /// <summary>
    /// The best order found: from chains begun at each slice, runs of slices are taken out and put in elsewhere, either way round, as long
    /// as that helps. Its ends are those that keep most of the given neighbours' direction.
    /// </summary>
    private static int[] Best(IReadOnlyList<double[]> places, int[] given, IJobReport report)
    {
        var starts = given.Select(first => Nearest(places, given.Length, first)).Append([.. given]).OrderBy(order => Fault(places, order)).Take(Starts);
        var best = starts.Select(start => Mended(places, start, report)).MinBy(order => Fault(places, order))!;
        var forwards = best.SelectMany((a, i) => best.Skip(i + 1).Select(b => Math.Sign(b - a))).Sum();
        return forwards < 0 ? [.. best.Reverse()] : best;
    }

    private static int[] Mended(IReadOnlyList<double[]> places, int[] start, IJobReport report)
    {
        var (best, least) = (start, Fault(places, start));
        for (var moved = true; moved;)
        {
            moved = false;
            foreach (var tried in Moves(best.Length))
            {
                report.Stop.ThrowIfCancellationRequested();
                var order = tried(best);
                var fault = Fault(places, order);
                if (fault >= least - 1e-9) continue;
                (best, least, moved) = (order, fault, true);
            }
        }

        return best;
    }

    /// <summary>Every way of taking a run of slices out and putting it in elsewhere or turned round; runs of up to a third of all.</summary>
    private static IEnumerable<Func<int[], int[]>> Moves(int n)
    {
        for (var from = 0; from < n; from++)
        {
            for (var length = 1; length <= Math.Max(1, n / 3) && from + length <= n; length++)
            {
                for (var to = 0; to <= n - length; to++)
                {
                    var (f, l, t) = (from, length, to);
                    if (t != f) yield return order => Moved(order, f, l, t, turned: false);
                    if (l > 1) yield return order => Moved(order, f, l, t, turned: true);
                }
            }
        }
    }

    private static int[] Moved(int[] order, int from, int length, int to, bool turned)
    {
        List<int> left = [.. order];
        var run = left.GetRange(from, length);
        if (turned) run.Reverse();
        left.RemoveRange(from, length);
        left.InsertRange(to, run);
        return [.. left];
    }

    /// <summary>A chain of slices each of which looks most like the one before, grown at both ends.</summary>
    private static int[] Nearest(IReadOnlyList<double[]> places, int count, int first)
    {
        double Apart(int a, int b) => places.Sum(place => (place[a] - place[b]) * (place[a] - place[b]));
        List<int> chain = [first];
        var left = Enumerable.Range(0, count).Where(i => i != first).ToList();
        while (left.Count > 0)
        {
            var front = left.MinBy(i => Apart(i, chain[0]));
            var back = left.MinBy(i => Apart(i, chain[^1]));
            var atFront = Apart(front, chain[0]) < Apart(back, chain[^1]);
            chain.Insert(atFront ? 0 : chain.Count, atFront ? front : back);
            left.Remove(atFront ? front : back);
        }

        return [.. chain];
    }

    /// <summary>How many of the places have their greatest sharpness twice.</summary>
    private static int Turns(IReadOnlyList<double[]> places, int[] order) => places.Count(place => Fault([place], order) > 2 * Bearable);

    private static List<double[]> Sharpness(IReadOnlyList<SourcePicture> pictures, IJobReport report)
    {
        var grids = new List<double[]>();
        foreach (var picture in pictures)
        {
            report.Stop.ThrowIfCancellationRequested();
            report.Say(grids.Count, pictures.Count * 4, ComposingSentences.Comparing(picture.Name));
            using var grey = Sheets.Grey(picture, WorkPixels).Grey;
            grids.Add(Grid(grey));
        }

        var places = new List<double[]>();
        for (var cell = 0; cell < grids[0].Length; cell++)
        {
            var along = grids.Select(grid => grid[cell]).ToArray();
            var (most, least) = (along.Max(), along.Min());
            // Energy below one step of 255 is noise, however much it changes.
            if (most < 1 || most < LeastGain * LeastGain * least) continue;
            // What is left in the softest slice is noise and other heights beside; it has no say in the order.
            places.Add([.. along.Select(value => (value - least) / (most - least))]);
        }

        // A few hundred places say as much as thousands; taken evenly.
        return [.. places.Where((_, i) => i % Math.Max(1, places.Count / MostPlaces) == 0)];
    }

    private static double[] Grid(Mat grey)
    {
        using var smooth = new Mat();
        using var edges = new Mat();
        Cv2.GaussianBlur(grey, smooth, default, 1);
        Cv2.Laplacian(smooth, edges, MatType.CV_32F, 3);
        using var energy = new Mat();
        Cv2.Multiply(edges, edges, energy);
        using var cells = new Mat();
        Cv2.Resize(energy, cells, new(grey.Width / Cell, grey.Height / Cell), 0, 0, InterpolationFlags.Area);
        cells.GetArray(out float[] values);
        return [.. values.Select(value => (double)value)];
    }
}
