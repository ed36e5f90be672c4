using System.Globalization;
using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Carrying;
using Lidoff.Seeing.Measuring.Targets;
using Lidoff.Seeing.Tests.Measuring.Targets;

namespace Lidoff.Seeing.Tests.Measuring.Carrying;

/// <summary>
/// A target rendered once by a camera with a known lens; then other pictures of the same camera, seen at another slant, focused again and with the zoom put back, whose places come from the same
/// rays. The printed 90 % must be 90 % (0.87 to 0.93, as the project's issues ask), and a zoom that was moved must be said, where a clean picture says nothing.
/// </summary>
public sealed class CarriedCoverageTests(ITestOutputHelper output)
{
    private const int Count = 240;

    private static readonly double[] Moves = [0, 0.01, 0.03, 0.05];

    // Targets are rendered and found once for all tests of this class.
    private static readonly Lazy<(TargetScene Scene, CameraCalibration Camera)[]> Calibrated = new(() =>
    {
        var made = new (TargetScene, CameraCalibration?)[Count];
        Parallel.For(0, Count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => made[i] = Calibrate(i));
        return [.. made.Where(each => each.Item2 is not null).Select(each => (each.Item1, each.Item2!))];
    });

    [Fact]
    public void Carried_scale_and_lens_hold_where_the_picture_has_no_known_length()
    {
        Assert.True(Calibrated.Value.Length > 0.97 * Count);
        // No grid taken for a coarser one, whose pitch would be another: where many dots are passed over every second makes a square grid too.
        Assert.All(Calibrated.Value, each => Assert.InRange(each.Camera.MmPerHalf * each.Scene.PxPerMm / 320, 0.985, 1.015));
        var (held, asked, errors) = (0, 0, new List<double>());
        foreach (var ((scene, camera), i) in Enumerable.Range(0, 3).SelectMany(_ => Calibrated.Value).Select((each, i) => (each, i)))
        {
            // A ring put back by hand is off by a hundredth, and the lens is then a little another one.
            var dice = new Dice(7000 + i);
            var zoom = 0.01 * dice.Normal();
            var next = Next(scene, zoom, dice);
            var picture = ScaledPicture.Of(new() { Image = "x", References = [camera.Across(next.Frame)], Targets = [], Camera = new("grid", camera) }, next.Frame).Value;
            foreach (var (length, truth) in Lengths(picture, next, dice))
            {
                asked++;
                if (truth >= length.LowMm && truth <= length.HighMm) held++;
                errors.Add(Math.Abs((length.ValueMm / truth) - 1));
                Assert.DoesNotContain(length.Warnings, warning => warning.Code == WarningCodes.ReferenceDisagrees);
            }
        }

        errors.Sort();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"held {held / (double)asked:0.000} of {asked}, median error {100 * errors[errors.Count / 2]:0.00} %"));
        Assert.InRange(held / (double)asked, 0.87, 0.93);

    }

    [Fact]
    public void With_a_known_length_of_its_own_the_lens_counts_and_a_moved_zoom_is_said()
    {
        var (told, all, of) = (new double[Moves.Length], 0, 0);
        for (var m = 0; m < Moves.Length; m++)
        {
            var (held, asked, plain, said, errors, bare) = (0, 0, 0, new int[2], new List<double>(), new List<double>());
            foreach (var ((scene, camera), i) in Calibrated.Value.Select((each, i) => (each, i)))
            {
                var dice = new Dice(9000 + (1000 * m) + i);
                var zoom = Moves[m] * (i % 2 == 0 ? 1 : -1);
                var next = Next(scene, zoom, dice);
                // One known length across most of the picture, or four known places about its middle, which tell the slant and nothing of the lens; clicked to half a pixel.
                var (from, to) = (new PicturePoint(90 + (40 * dice.Even(0, 1)), 180 + (120 * dice.Even(0, 1))), new PicturePoint(520 + (40 * dice.Even(0, 1)), 180 + (120 * dice.Even(0, 1))));
                var known = new ReferenceLength(dice.Clicked(from, 0.5), dice.Clicked(to, 0.5), Truth(next, from, to), 0, 0, 0.5);
                PicturePoint[] corners = [new(200, 150), new(440, 150), new(440, 330), new(200, 330)];
                KnownPoint[] places = [.. corners.Select(at => (at, On: next.Under(at.X, at.Y))).Select(each => new KnownPoint(dice.Clicked(each.at, 0.5), each.On.X, each.On.Y, 0))];
                var job = new MeasureJob { Image = "x", References = i % 4 < 2 ? [known] : [], KnownPoints = i % 4 < 2 ? [] : places, Targets = [], Camera = new("grid", camera), ClickPx = 0.5 };
                var picture = ScaledPicture.Of(job, next.Frame).Value;
                var without = ScaledPicture.Of(job with { Camera = null }, next.Frame).Value;
                var again = new Dice(dice.Seed + 500_000);
                var warned = false;
                foreach (var (length, truth) in Lengths(picture, next, dice))
                {
                    asked++;
                    if (truth >= length.LowMm && truth <= length.HighMm) held++;
                    if (i % 4 >= 2) errors.Add((length.HighMm - length.LowMm) / 2 / truth);
                    warned |= length.Warnings.Any(warning => warning.Code == WarningCodes.ReferenceDisagrees && warning.Say.Contains("“grid”", StringComparison.Ordinal));
                }

                foreach (var (length, truth) in Lengths(without, next, again))
                {
                    if (truth >= length.LowMm && truth <= length.HighMm) plain++;
                    if (i % 4 >= 2) bare.Add((length.HighMm - length.LowMm) / 2 / truth);
                }

                if (warned) said[i % 4 < 2 ? 0 : 1]++;
            }

            (all, of) = (all + held, of + asked);
            told[m] = said[1] / (0.5 * Calibrated.Value.Length);
            errors.Sort();
            bare.Sort();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"zoom moved by {100 * Moves[m]:0} %: held {held / (double)asked:0.000} ({plain / (double)asked:0.000} without), half width {100 * errors[errors.Count / 2]:0.00} % ({100 * bare[bare.Count / 2]:0.00} %), said in {told[m]:0.000}, with one length in {said[0] / (0.5 * Calibrated.Value.Length):0.000}"));

        }

        Assert.InRange(all / (double)of, 0.87, 0.93);
        // A hundredth is what putting a ring back makes; five times that is said wherever the slant is known.
        Assert.Equal([0, 0], told[..2]);
        Assert.True(told[^1] > 0.95);
    }

    private static (TargetScene, CameraCalibration?) Calibrate(int i)
    {
        var dice = new Dice(3000 + i);
        var (columns, rows) = (10 + (i % 5), 7 + (i % 3));
        var pitchU = i % 2 == 0 ? KnownTarget.PrintedU : KnownTarget.GlassU;
        const double pitch = 2;
        var real = pitch * (1 + (pitchU * dice.Normal()));
        var scene = new TargetScene(i % 2 == 0 ? TargetPattern.Checker : TargetPattern.Dots, columns, rows, real)
        {
            Width = 640,
            Height = 480,
            PxPerMm = dice.Even(0.6, 0.85) * 640 / (columns * real),
            Focal = 1.4 * Math.Pow(8 / 1.4, dice.Even(0, 1)),
            SlantDegrees = dice.Even(0, 8),
            TowardsDegrees = dice.Even(0, 360),
            TurnDegrees = dice.Even(-20, 20),
            Bend = i % 3 == 0 ? dice.Even(-0.05, 0.05) : dice.Even(-0.01, 0.01),
            BlurPx = dice.Even(0.5, 1.5),
            Grain = dice.Even(1, 4),
            Seed = i,
        };
        if (!TargetSearch.Find(scene.Grey(), scene.Frame).TryValue(out var found)) return (scene, null);
        var target = KnownTarget.Of(found, pitch, pitchU * pitch);
        return (scene, CameraCalibration.Of(ScaledPicture.Of(new() { Image = "grid", References = [target.Longest(0)], Targets = [] }, scene.Frame).Value));
    }

    /// <summary>The same camera before another board: its scale off by what the zoom was moved, its lens by three times that (it goes with the cube of the focal length), and by focusing besides.</summary>
    private static TargetScene Next(TargetScene scene, double zoom, Dice dice) => scene with
    {
        PxPerMm = scene.PxPerMm * (1 + zoom),
        Bend = scene.Bend * (1 - (3 * zoom)) * (1 + (0.08 * dice.Normal())),
        SlantDegrees = Slant(dice.Even(0, 1), dice.Even(0, 1)),
        TowardsDegrees = dice.Even(0, 360),
        Off = (0, 0),
    };

    // A third on stands, most of the others in hands, some slanted on purpose.
    private static double Slant(double hand, double degrees) => degrees * (hand < 0.33 ? 1.5 : hand < 0.85 ? 10 : 25);

    private static double Truth(TargetScene scene, PicturePoint a, PicturePoint b)
    {
        var (one, two) = (scene.Under(a.X, a.Y), scene.Under(b.X, b.Y));
        return Math.Sqrt(((one.X - two.X) * (one.X - two.X)) + ((one.Y - two.Y) * (one.Y - two.Y)));
    }

    private static IEnumerable<(MeasuredLength Length, double Truth)> Lengths(ScaledPicture picture, TargetScene scene, Dice dice)
    {
        for (var n = 0; n < 4;)
        {
            PicturePoint a = new(dice.Even(20, 620), dice.Even(20, 460)), b = new(dice.Even(20, 620), dice.Even(20, 460));
            if (a.DistanceTo(b) < 100) continue;
            n++;
            yield return (picture.Length(new("t", dice.Clicked(a, 0.5), dice.Clicked(b, 0.5), ClickPx: 0.5)).Value, Truth(scene, a, b));
        }
    }

    private sealed class Dice(int seed)
    {
        private readonly Random random = new(seed);

        public int Seed => seed;

        public double Even(double low, double high) => low + ((high - low) * random.NextDouble());

        public double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

        public PicturePoint Clicked(PicturePoint at, double u) => new(at.X + (u * Normal()), at.Y + (u * Normal()));
    }
}
