using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;
using OpenCvSharp;

namespace Lidoff.Seeing.Tests.Composing;

/// <summary>
/// Slices of the invented main board with the faults of a real stand: the focus moves up, the scale with it (breathing), the stage drifts
/// sideways, every slice has noise of its own and goes through JPEG. Each is rendered for itself; none is a crop or a copy of another.
/// </summary>
internal static class FocusBench
{
    public const int Width = 720;
    public const int Height = 540;
    public const double StepMm = 0.2;
    private const double BlurPxPerMm = 9;

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<int, byte[]> Rendered = [];

    public static Scene Slice(int k) => MainBoard.Top(7) with
    {
        Width = Width, Height = Height, Title = "", RulerMm = 0, LookAt = (17.5 + (0.004 * k), 10.5 - (0.006 * k)), PxPerMm = 34 * (1 + (0.0015 * k)), CameraDistanceMm = 150, Grain = 0, BlurPx = 0.6,
    };

    /// <summary>Height of what each pixel of a slice shows, mm.</summary>
    public static Mat Heights(Scene scene)
    {
        var heights = new Mat(scene.Height, scene.Width, MatType.CV_32F, Scalar.All(0));
        foreach (var part in SceneTruth.Of(scene).Parts.OrderBy(each => each.Part.HeightMm))
        {
            Cv2.FillConvexPoly(heights, part.Corners.Select(at => new Point((int)Math.Round(at.X), (int)Math.Round(at.Y))), Scalar.All(part.Part.HeightMm));
        }

        return heights;
    }

    /// <summary>Adds slices in the given order of focus.</summary>
    public static void Add(Bench bench, IEnumerable<int> order)
    {
        foreach (var k in order) bench.Add(Rendered.GetOrAdd(k, Pixels), Width, Height);
    }

    private static byte[] Pixels(int k)
    {
        var scene = Slice(k);
        using var sharp = Mat.FromPixelData(Height, Width, MatType.CV_8UC3, SceneRenderer.Render(scene).Pixels);
        using var heights = Heights(scene);
        double[] sigmas = [0, 0.9, 1.8, 2.7, 3.6, 5.4, 7.2, 9, 12.6, 18];
        var blurred = sigmas.Select(sigma =>
        {
            var soft = new Mat();
            sharp.ConvertTo(soft, MatType.CV_32F);
            if (sigma > 0) Cv2.GaussianBlur(soft, soft, default, sigma);
            return soft;
        }).ToList();
        var pixels = new byte[Width * Height * 3];
        for (var y = 0; y < Height; y++)
        {
            for (var x = 0; x < Width; x++)
            {
                var sigma = Math.Min(17.9, BlurPxPerMm * Math.Abs(heights.At<float>(y, x) - (k * StepMm)));
                var at = Array.FindLastIndex(sigmas, each => each <= sigma);
                var part = (float)((sigma - sigmas[at]) / (sigmas[at + 1] - sigmas[at]));
                var (a, b) = (blurred[at].At<Vec3f>(y, x), blurred[at + 1].At<Vec3f>(y, x));
                for (var band = 0; band < 3; band++)
                {
                    var value = ((1 - part) * a[band]) + (part * b[band]) + (2 * Scatter.Normal(500 + k, x, (y * 3) + band));
                    pixels[(((y * Width) + x) * 3) + band] = (byte)Math.Clamp(value + 0.5, 0, 255);
                }
            }
        }

        blurred.ForEach(each => each.Dispose());
        return pixels;
    }
}
