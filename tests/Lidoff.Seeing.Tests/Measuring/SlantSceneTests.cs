using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Cameras;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>
/// Pictures as slanted as bench pictures are believed to be (a third from stands, half from hands, the rest slanted on purpose), with precise known lengths (clicks of 0.3 to 0.7 px, lengths to
/// 0.05 %), drawn by a camera written apart from the program's (<see cref="BenchScene"/>).
/// </summary>
public sealed class SlantSceneTests(ITestOutputHelper output)
{
    [Theory]
    // Whatever is told or not: of all pictures nine in ten hold. Measured on 400 each before the draws were made more: 0.893 and 0.903, of those untold 0.872 and 0.914.
    [InlineData(2)]
    [InlineData(3)]
    public void Of_pictures_slanted_as_is_believed_nine_in_ten_hold(int references)
    {
        const int scenes = 200;
        var rows = new (bool Told, bool Held, double Half)[scenes];
        Parallel.For(0, scenes, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => rows[i] = One(new Random((i * 1000) - 1 + (references * 100)), references));
        double Held(Func<(bool Told, bool Held, double Half), bool> which) => rows.Where(which).Average(row => row.Held ? 1.0 : 0);
        output.WriteLine(FormattableString.Invariant($"{references} lengths: held {Held(_ => true):0.000}, of {rows.Count(row => !row.Told)} untold {Held(row => !row.Told):0.000}, half of the interval {100 * rows.Select(row => row.Half).Order().ElementAt(scenes / 2):0.00} %"));
        // Binomial, n = 200, p = 0.9: two and a half standard deviations are 0.053.
        Assert.InRange(Held(_ => true), 0.847, 0.953);
    }

    [Fact]
    public void Other_draws_give_nearly_the_same_interval()
    {
        var apart = new List<double>();
        for (var i = 0; i < 24; i++)
        {
            var random = new Random(i + 77);
            var (scene, click) = (Scene(random), 0.3 + (0.4 * random.NextDouble()));
            var seen = Enumerable.Range(0, 2 + (i % 3)).Select(_ =>
            {
                var (from, to, mm) = Chord(scene, random, click, 800, 2500);
                return new SeenReference(SeenChord.Of(from, to, Measured.Frame), mm * (1 + (0.0005 * BenchScene.Normal(random))), mm * Math.Sqrt((2 * Math.Pow(click / from.DistanceTo(to), 2)) + (0.0005 * 0.0005)), 0);
            }).ToArray();
            var fits = new[] { 1, 2 }.Select(seed => PoseFit.Of(new(seen, null), CameraBelief.Of(null, 50, null), seed: seed)!).ToList();
            for (var k = 0; k < 4; k++)
            {
                var (from, to, _) = Chord(scene, random, click, 400, 2000);
                var ends = fits.Select(fit => Interval(fit, SeenChord.Of(from, to, Measured.Frame))).ToList();
                var u = (ends[0].U + ends[1].U) / 2;
                apart.AddRange([Math.Abs(ends[0].Low - ends[1].Low) / u, Math.Abs(ends[0].High - ends[1].High) / u]);
            }
        }

        apart.Sort();
        var (median, tenth) = (apart[apart.Count / 2], apart[apart.Count * 9 / 10]);
        output.WriteLine(FormattableString.Invariant($"ends of the interval by two sets of draws: median {median:0.000} of the standard uncertainty apart, one in ten more than {tenth:0.00}"));
        // On 60 such pictures 0.07 and 0.33 (the cloud alone, as it was: 0.11 and 0.53). Where one in twenty poses lies far off, a hundredth more or less of them moves an end by a whole standard uncertainty.
        Assert.InRange(median, 0, 0.1);
        Assert.InRange(tenth, 0, 0.5);
    }

    private static (double Low, double High, double U) Interval(PoseFit fit, SeenChord chord)
    {
        (double Weight, double Mean, double Sd)[] parts = [.. fit.Poses.Select(pose =>
        {
            var mm = pose.DistanceMm * pose.Pose.Unit(chord, pose.Focal);
            return (pose.Weight, mm, mm * pose.UMm / pose.DistanceMm);
        })];
        var mean = parts.Sum(part => part.Weight * part.Mean);
        return (NormalMixture.Quantile(parts, 0.05), NormalMixture.Quantile(parts, 0.95), Math.Sqrt(parts.Sum(part => part.Weight * ((part.Sd * part.Sd) + ((part.Mean - mean) * (part.Mean - mean))))));
    }

    private static (bool Told, bool Held, double Half) One(Random random, int references)
    {
        var (scene, click) = (Scene(random), 0.3 + (0.4 * random.NextDouble()));
        var known = Enumerable.Range(0, references).Select(_ =>
        {
            var (from, to, mm) = Chord(scene, random, click, 800, 2500);
            return new ReferenceLength(from, to, mm * (1 + (0.0005 * BenchScene.Normal(random))), 0.0005 * mm);
        }).ToList();
        var (a, b, truth) = Chord(scene, random, click, 400, 2000);
        var length = ScaledPicture.Of(new() { Image = "x", References = known, Targets = [], ClickPx = click }, Measured.Frame).Value.Length(new("t", a, b)).Value;
        return (length.Warnings.Any(warning => warning.Code is "tilt" or "unequal-axes" or "reference-disagrees"), truth >= length.LowMm && truth <= length.HighMm, (length.HighMm - length.LowMm) / 2 / truth);
    }

    // Hands as CameraBelief has them: tangents along each axis, normal.
    private static BenchScene Scene(Random random)
    {
        var hand = random.NextDouble() switch { < 0.33 => 0.015, < 0.85 => 0.07, _ => 0.2 };
        var (right, down) = (hand * BenchScene.Normal(random), hand * BenchScene.Normal(random));
        var lens = (random.Next(8) == 0 ? 0.03 : 0.003) * BenchScene.Normal(random);
        return new(Math.Atan(Math.Sqrt((right * right) + (down * down))) * 180 / Math.PI, random.NextDouble() * 360, random.NextDouble() * 360, 0.7 * Math.Pow(4 / 0.7, random.NextDouble()), 20 + (random.NextDouble() * 80), lens);
    }

    private static (PicturePoint From, PicturePoint To, double Mm) Chord(BenchScene scene, Random random, double click, double least, double most)
    {
        var (x1, y1, x2, y2) = scene.Chord(random, least, most, 0);
        return (BenchScene.Clicked(random, scene.Show(x1, y1, 0), click), BenchScene.Clicked(random, scene.Show(x2, y2, 0), click), Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2))));
    }
}
