using System.Text;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Rendering;
using Lidoff.Seeing.Rendering.Invented;
using NetVips;
using OpenCvSharp;

namespace Lidoff.Seeing.Tests.Composing;

public sealed class BurstAverageTests
{
    private const int Width = 480;
    private const int Height = 360;

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<double, byte[]> Views = [];

    private static byte[] View(double moveMm) =>
        SceneRenderer.Render(MainBoard.Top(7) with { Width = Width, Height = Height, Title = "", RulerMm = 0, LookAt = (11 + moveMm, 9), PxPerMm = 34, Grain = 0 }).Pixels;

    private static Mat Clean()
    {
        using var clean = Mat.FromPixelData(Height, Width, MatType.CV_8UC3, View(0));
        return clean.CvtColor(ColorConversionCodes.RGB2BGR);
    }

    // A microscope camera in a dim room: noise of six steps, new in every frame; the stage is knocked before some.
    private static byte[] Frame(int seed, double moveMm = 0)
    {
        byte[] pixels = [.. Views.GetOrAdd(moveMm, View)];
        for (var i = 0; i < pixels.Length; i++) pixels[i] = (byte)Math.Clamp(pixels[i] + (6 * Scatter.Normal(seed, i % 1999, i / 1999)) + 0.5, 0, 255);
        return pixels;
    }

    [Fact]
    public void Noise_goes_down_as_the_root_of_the_frames_and_moved_frames_stay_out()
    {
        using var bench = new Bench();
        // 0.06 mm at 34 px/mm are 2 px.
        for (var k = 0; k < 18; k++) bench.Add(Frame(k, k is 4 or 11 ? 0.06 : 0), Width, Height, quality: 98);
        var made = bench.Make(ComposeMethod.Average).Value;
        Assert.Equal(16, made.Inputs.Count);
        Assert.Equal([bench.Pictures[4].Sha256, bench.Pictures[11].Sha256], made.LeftOut);
        Assert.Matches("^“p05.jpg” was left out: it lies 2(\\.[01])? px from the others\\.$", made.Says[1]);
        using var clean = Clean();
        using var mean = Bench.Opened(made.Picture);
        using var first = Cv2.ImRead(bench.Pictures[0].Path);
        // √16 = 4; rounding to whole steps of 255 and JPEG keep a little.
        Assert.InRange(Noise(first, clean) / Noise(mean, clean), 3.2, 4.2);
    }

    [Fact]
    public void What_it_says_of_its_noise_is_what_is_left_against_the_truth()
    {
        using var bench = new Bench();
        for (var k = 0; k < 9; k++) bench.Add(Frame(k), Width, Height, quality: 98);
        var made = bench.Make(ComposeMethod.Average).Value;
        var numbers = System.Text.RegularExpressions.Regex.Matches(made.Says[0], "[0-9]+\\.[0-9]+").Select(m => double.Parse(m.Value, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        using var clean = Clean();
        using var mean = Bench.Opened(made.Picture);
        using var first = Cv2.ImRead(bench.Pictures[0].Path);
        Assert.InRange(numbers[0] / Noise(mean, clean), 0.9, 1.1);
        Assert.InRange(numbers[1] / Noise(first, clean), 0.95, 1.05);
    }

    [Fact]
    public void The_larger_group_counts_even_if_the_first_frame_is_not_in_it()
    {
        using var bench = new Bench();
        for (var k = 0; k < 5; k++) bench.Add(Frame(k, k == 0 ? 0.1 : 0), Width, Height);
        Assert.Equal([.. bench.Pictures.Skip(1).Select(each => each.Sha256)], bench.Make(ComposeMethod.Average).Value.Inputs);
    }

    [Fact]
    public void A_camera_that_never_stood_still_is_refused()
    {
        using var bench = new Bench();
        for (var k = 0; k < 4; k++) bench.Add(Frame(k, 0.1 * k), Width, Height);
        Assert.Equal("No two of these frames lie on one another: camera or specimen moved all the time. Clamp both and take the burst again.", bench.Make(ComposeMethod.Average).Faults[0].Say);
    }

    [Fact]
    public void Nothing_of_a_cameras_notes_goes_into_the_picture()
    {
        using var bench = new Bench();
        for (var k = 0; k < 2; k++)
        {
            bench.Add(Frame(k), Width, Height, tags: image =>
            {
                image.Set(GValue.GStrType, "exif-ifd0-Artist", "Former Owner");
                image.Set(GValue.GStrType, "exif-ifd3-GPSLatitude", "48/1 8/1 0/1");
            });
        }

        Assert.Contains("Former Owner", Encoding.Latin1.GetString(File.ReadAllBytes(bench.Pictures[0].Path)), StringComparison.Ordinal);
        var png = Encoding.Latin1.GetString(bench.Make(ComposeMethod.Average).Value.Picture);
        Assert.DoesNotContain("Former Owner", png, StringComparison.Ordinal);
        Assert.DoesNotContain("eXIf", png, StringComparison.Ordinal);
        Assert.DoesNotContain("tEXt", png, StringComparison.Ordinal);
    }

    private static double Noise(Mat a, Mat b)
    {
        using var difference = new Mat();
        Cv2.Subtract(a, b, difference, dtype: MatType.CV_32F);
        Cv2.MeanStdDev(difference, out _, out var spread);
        return spread.Val1;
    }
}
