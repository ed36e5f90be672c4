using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;
using OpenCvSharp;

namespace Lidoff.Seeing.Tests.Composing;

/// <summary>
/// Tiles of an invented board as a stand gives them: the stage goes on by hand (drift, a little turn), the lamp lies to one side and the lens
/// darkens its corners, exposure differs, parts stand up and show their flanks differently in every tile (parallax), noise and JPEG.
/// Each tile is rendered from its own camera; none is cut out of another.
/// </summary>
internal static class TileBench
{
    public const int Width = 760;
    public const int Height = 560;
    public const double PxPerMm = 44;

    public static Scene Board { get; } = MainBoard.Top(7) with { Title = "", RulerMm = 0, Grain = 0, BlurPx = 0.8, CameraDistanceMm = 110, PxPerMm = PxPerMm, Width = Width, Height = Height };

    /// <summary>A tile that looks at a place of the board, mm.</summary>
    public static Scene Tile(Scene board, double x, double y, int seed) => board with
    {
        LookAt = (x + (0.2 * (Scatter.Even(seed, 1, 1) - 0.5)), y + (0.2 * (Scatter.Even(seed, 2, 1) - 0.5))), TurnDegrees = 1.6 * (Scatter.Even(seed, 3, 1) - 0.5),
    };

    /// <summary>Renders and adds it.</summary>
    public static Scene Add(Bench bench, Scene tile, int seed, double? exposure = null, double grain = 2)
    {
        var pixels = SceneRenderer.Render(tile).Pixels;
        var (w, h) = (tile.Width, tile.Height);
        var gain = exposure ?? (0.85 + (0.3 * Scatter.Even(seed, 4, 1)));
        for (var y = 0; y < h; y++)
        {
            for (var x = 0; x < w; x++)
            {
                var (u, v) = ((2.0 * x / w) - 1, (2.0 * y / h) - 1);
                var light = gain * (1 - (0.18 * ((u * u) + (v * v))) + (0.1 * u));
                for (var band = 0; band < 3; band++)
                {
                    var at = (((y * w) + x) * 3) + band;
                    pixels[at] = (byte)Math.Clamp((pixels[at] * light) + (grain * Scatter.Normal(700 + seed, x, (y * 3) + band)) + 0.5, 0, 255);
                }
            }
        }

        bench.Add(pixels, w, h);
        return tile;
    }

    /// <summary>
    /// How far flat things of a stitched board lie from where they are in the frame of its first tile, px, all over the picture: 95 of 100 lie
    /// nearer than the first number; what share of them was found at all, and how many there are. Parts that stand up are left out: they have no
    /// one place in pictures from several.
    /// </summary>
    public static (double Px95, double Worst, double Share, int Places) Error(Mat stitched, Scene first, (double X, double Y) firstAt)
    {
        var (wanted, got, flat) = Truth(stitched, first, firstAt);
        var places = Lidoff.Seeing.Composing.Blocks.Places(wanted, 36, 250, flat).Where(at =>
        {
            Cv2.MeanStdDev(wanted[new Rect(at.X - 18, at.Y - 18, 36, 36)], out _, out var spread);
            return spread.Val0 > 10;
        }).ToList();
        var found = Lidoff.Seeing.Composing.Blocks.Match(wanted, got, places, 36, 10, 0.6);
        var away = found.Select(match => Math.Sqrt(((match.ToX - match.X) * (match.ToX - match.X)) + ((match.ToY - match.Y) * (match.ToY - match.Y)))).Order().ToList();
        return (away[(int)(0.95 * (away.Count - 1))], away[^1], (double)found.Count / places.Count, places.Count);
    }

    /// <summary>The stitched light over the true one at flat places: 5 and 95 of 100 lie below.</summary>
    public static (double Low, double High) Light(Mat stitched, Scene first, (double X, double Y) firstAt)
    {
        var (wanted, got, flat) = Truth(stitched, first, firstAt);
        List<double> ratios = [];
        var (columns, rows) = (wanted.Cols, wanted.Rows);
        for (var y = 0; y + 24 < rows; y += 24)
        {
            for (var x = 0; x + 24 < columns; x += 24)
            {
                var box = new Rect(x, y, 24, 24);
                if (Cv2.CountNonZero(flat[box]) == 24 * 24) ratios.Add(Cv2.Mean(got[box]).Val0 / Cv2.Mean(wanted[box]).Val0);
            }
        }

        ratios.Sort();
        return (ratios[ratios.Count / 20], ratios[ratios.Count * 19 / 20]);
    }

    /// <summary>Brightness as it should be, as it is, and 255 where something lies flat and is covered.</summary>
    private static (Mat Wanted, Mat Got, Mat Flat) Truth(Mat stitched, Scene first, (double X, double Y) firstAt)
    {
        // The whole board as the first tile's camera would show it on a larger sensor, without any of the faults.
        var (right, down) = (stitched.Width - (int)firstAt.X, stitched.Height - (int)firstAt.Y);
        var (halfX, halfY) = (Math.Max(firstAt.X + (first.Width / 2.0), right - (first.Width / 2.0)), Math.Max(firstAt.Y + (first.Height / 2.0), down - (first.Height / 2.0)));
        var ideal = first with { Width = 2 * (int)Math.Ceiling(halfX), Height = 2 * (int)Math.Ceiling(halfY) };
        using var rendered = Mat.FromPixelData(ideal.Height, ideal.Width, MatType.CV_8UC3, SceneRenderer.Render(ideal).Pixels);
        using var grey = rendered.CvtColor(ColorConversionCodes.RGB2GRAY);
        using var tall = FocusBench.Heights(ideal);
        var got = stitched.CvtColor(ColorConversionCodes.BGR2GRAY);
        var box = new Rect((ideal.Width / 2) - (first.Width / 2) - (int)firstAt.X, (ideal.Height / 2) - (first.Height / 2) - (int)firstAt.Y, stitched.Width, stitched.Height);
        var wanted = grey[box].Clone();
        // Only what lies flat, is covered by tiles, and has corners: 255.
        var flat = new Mat();
        Cv2.Compare(tall[box], 0.1, flat, CmpTypes.LT);
        using var covered = new Mat();
        Cv2.Compare(got, 3, covered, CmpTypes.GT);
        using var kernel = Cv2.GetStructuringElement(MorphShapes.Rect, new(25, 25));
        Cv2.MorphologyEx(covered, covered, MorphTypes.Close, kernel);
        Cv2.Erode(flat, flat, kernel);
        Cv2.BitwiseAnd(flat, covered, flat);
        return (wanted, got, flat);
    }
}
