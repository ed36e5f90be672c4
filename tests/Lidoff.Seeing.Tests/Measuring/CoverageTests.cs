using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>
/// Photographed boards with known pose, lens, height and noise: the printed 90 % must be 90 % (0.87 to 0.93 on 500, as the project's
/// issues ask), and the answers must be near. Who takes the pictures: a third stands, two thirds hands up to 10° off, each direction and
/// each size alike; one lens in eight bends. These are not the program's own priors, which are normal in each axis.
/// </summary>
public sealed class CoverageTests(ITestOutputHelper output)
{
    [Fact]
    public void On_500_scenes_ninety_per_cent_means_ninety_per_cent()
    {
        var tally = Tally(500, seed: 11, random => 1 + random.Next(4), camera: random => random.Next(2) == 0);
        Assert.InRange(tally.Held, 0.87, 0.93);
        Assert.InRange(tally.MedianError, 0, 0.006);
    }

    [Theory]
    // Each by itself may lean a little: too wide where nothing but one length is known of a picture taken from a stand, and the other way round.
    [InlineData(21, 1, true)]
    [InlineData(22, 2, true)]
    [InlineData(23, 3, false)]
    [InlineData(24, 5, false)]
    public void With_each_number_of_references_it_holds_to_what_two_hundred_can_tell(int seed, int references, bool camera)
    {
        // Binomial, n = 200, p = 0.9: standard deviation 0.021, so 0.84 to 0.96 is nearly three of them. One length leaves the pictures
        // that are slanted on purpose possible, which none of these is: then it may hold more often.
        var tally = Tally(200, seed, _ => references, _ => camera);
        Assert.InRange(tally.Held, 0.84, references == 1 ? 0.98 : 0.96);
    }

    [Fact]
    public void A_picture_square_to_the_board_brings_no_warning()
    {
        var tally = Tally(200, seed: 31, random => 1 + random.Next(5), camera: _ => true, slant: random => 1.5 * random.NextDouble(), flat: true, lens: _ => 0);
        Assert.Equal(0, tally.Warned);
        Assert.InRange(tally.Held, 0.9, 1);
    }

    private (double Held, double MedianError, int Warned) Tally(
        int scenes, int seed, Func<Random, int> references, Func<Random, bool> camera, Func<Random, double>? slant = null, bool flat = false, Func<Random, double>? lens = null)
    {
        var random = new Random(seed);
        var (held, warned, errors, codes) = (0, 0, new List<double>(), new List<string>());
        for (var i = 0; i < scenes; i++)
        {
            var (job, truth) = Scene(random, references(random), camera(random), (slant ?? Slant)(random), flat, (lens ?? Lens)(random));
            var length = Measurement.Run(job, new(BenchScene.Width, BenchScene.Height)).Value[0].Length.Value;
            if (truth >= length.LowMm && truth <= length.HighMm) held++;
            if (length.Warnings.Count > 0) warned++;
            foreach (var warning in length.Warnings) codes.Add(warning.Code);
            errors.Add(Math.Abs((length.ValueMm / truth) - 1));
        }

        errors.Sort();
        var (share, median) = (held / (double)scenes, errors[scenes / 2]);
        output.WriteLine($"held {share:0.000}, median error {median:0.00%}, warned {warned} of {scenes}: {string.Join(", ", codes.CountBy(code => code).OrderBy(code => code.Key, StringComparer.Ordinal))}");
        return (share, median, warned);
    }

    private static double Slant(Random random) => random.NextDouble() < 0.33 ? 1.5 * random.NextDouble() : 10 * random.NextDouble();

    private static double Lens(Random random) => (random.Next(8) == 0 ? 0.03 : 0.003) * BenchScene.Normal(random);

    private static (MeasureJob Job, double Truth) Scene(Random random, int references, bool camera, double slant, bool flat, double lens)
    {
        // Distance log-uniform between a wide phone lens (0.7 long sides) and a macro lens (4).
        var scene = new BenchScene(
            slant, random.NextDouble() * 360, random.NextDouble() * 360, 0.7 * Math.Pow(4 / 0.7, random.NextDouble()), 20 + (random.NextDouble() * 80), lens);
        var click = 0.5 + random.NextDouble();
        var known = Enumerable.Range(0, references).Select(_ => Reference(random, scene, click, flat ? 0 : 0.02 * random.NextDouble() * scene.DistanceMm)).ToList();
        var height = flat ? 0 : 0.03 * random.NextDouble() * scene.DistanceMm;
        var (from, to, truth) = Chord(random, scene, 300, 1500, height, click);
        // Heights are typed from drawings or by eye, a twentieth off.
        height *= 1 + (0.05 * BenchScene.Normal(random));
        return (
            new()
            {
                Image = "x",
                References = known,
                Targets = [new("t", new TargetLength("t", from, to, height))],
                ClickPx = click,
                CameraDistanceMm = camera ? scene.DistanceMm * (1 + (0.03 * BenchScene.Normal(random))) : null,
            },
            truth);
    }

    private static ReferenceLength Reference(Random random, BenchScene scene, double click, double height)
    {
        var (from, to, truth) = Chord(random, scene, 400, 2500, height, click);
        var u = truth * 0.003 * random.NextDouble();
        return new(from, to, truth + (u * BenchScene.Normal(random)), u, height);
    }

    private static (PicturePoint From, PicturePoint To, double Truth) Chord(Random random, BenchScene scene, double least, double most, double height, double click)
    {
        var (x1, y1, x2, y2) = scene.Chord(random, least, most, height);
        return (
            BenchScene.Clicked(random, scene.Show(x1, y1, height), click),
            BenchScene.Clicked(random, scene.Show(x2, y2, height), click),
            Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2))));
    }
}
