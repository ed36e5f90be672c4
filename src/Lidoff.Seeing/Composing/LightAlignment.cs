using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Vision;
using OpenCvSharp;

namespace Lidoff.Seeing.Composing;

/// <summary>
/// Whether the camera stood still while the light went round. Shading turns with the light, so edges are compared whatever their sign:
/// outlines, pads and holes are where they were. A small move is taken back; a large one changes what is seen and is refused.
/// </summary>
internal sealed record LightAlignment(IReadOnlyList<Similarity> Maps, double RestPx, IReadOnlyList<string> Says)
{
    private const double WorkPixels = 1_500_000;
    private static readonly BlockAlignment Laying = new(Side: 72, MostBlocks: 120, Reach: 16, NextReach: 16, Rounds: 2, Alike: 0.3, Soft: 0.7);

    // Of the picture's width: beyond it the light falls on other slopes, and other things are seen.
    private const double MostMove = 0.03;

    private const double Noticed = 0.3;

    /// <summary>Maps of each picture onto the first, px of the pictures.</summary>
    public static LightAlignment Of(IReadOnlyList<SourcePicture> pictures, IJobReport report)
    {
        List<Similarity> maps = [Similarity.Identity];
        List<string> says = [];
        List<double> rests = [];
        var (grey, times) = Sheets.Grey(pictures[0], WorkPixels);
        using var first = Edges(grey);
        foreach (var picture in pictures.Skip(1))
        {
            report.Stop.ThrowIfCancellationRequested();
            report.Say(maps.Count, pictures.Count * 2, ComposingSentences.Comparing(picture.Name));
            using var now = Edges(Sheets.Grey(picture, WorkPixels).Grey);
            if (Between(first, now) is not { } found) throw new RefusedException(new Fault(picture.Name, "a camera that stood still", ComposingSentences.LightElsewhere(picture.Name)));
            var map = found.Map.Finer(times);
            var (x, y) = map.Apply(picture.Header.Width / 2.0, picture.Header.Height / 2.0);
            var move = Math.Sqrt(Square(x - (picture.Header.Width / 2.0)) + Square(y - (picture.Header.Height / 2.0)));
            if (move > MostMove * picture.Header.Width || Math.Abs(map.Scale - 1) > 0.01 || Math.Abs(map.B) > 0.02)
            {
                throw new RefusedException(new Fault(picture.Name, "a camera that stood still", ComposingSentences.LightMoved(picture.Name, move)));
            }

            var still = move < Noticed && Math.Abs(map.Scale - 1) * picture.Header.Width < 2 * Noticed && Math.Abs(map.B) * picture.Header.Width < 2 * Noticed;
            if (!still) says.Add(ComposingSentences.LightTakenBack(picture.Name, move));
            maps.Add(still ? Similarity.Identity : map);
            rests.Add(found.Rms * times);
        }

        return new(maps, Math.Sqrt(rests.Average(Square)), says);
    }

    private static double Square(double value) => value * value;

    private static (Similarity Map, double Rms)? Between(Mat first, Mat now)
    {
        using var a = new Mat();
        using var b = new Mat();
        first.ConvertTo(a, MatType.CV_32F);
        now.ConvertTo(b, MatType.CV_32F);
        using var window = new Mat();
        Cv2.CreateHanningWindow(window, a.Size(), MatType.CV_32F);
        var shift = Cv2.PhaseCorrelate(a, b, window, out _);
        return Laying.Of(first, now, new(1, 0, -shift.X, -shift.Y), (places, _) => Math.Max(8, places / 5));
    }

    /// <summary>Strength of edges against their surroundings, 8 bits.</summary>
    private static Mat Edges(Mat grey)
    {
        using var sheet = grey;
        using var wide = new Mat();
        sheet.ConvertTo(wide, MatType.CV_32F, 1, 4);
        Cv2.GaussianBlur(wide, wide, default, 1.2);
        using var across = new Mat();
        using var down = new Mat();
        Cv2.Sobel(wide, across, MatType.CV_32F, 1, 0);
        Cv2.Sobel(wide, down, MatType.CV_32F, 0, 1);
        using var strength = new Mat();
        Cv2.Magnitude(across, down, strength);
        using var around = new Mat();
        Cv2.GaussianBlur(wide, around, default, 20);
        using var even = new Mat();
        Cv2.Divide(strength, around, even);
        var edges = new Mat();
        even.ConvertTo(edges, MatType.CV_8U, 160);
        return edges;
    }
}
