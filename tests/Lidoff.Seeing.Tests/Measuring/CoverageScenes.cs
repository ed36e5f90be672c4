using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>Measures one length in each of many photographed boards and counts how often its 90 % interval held the truth.</summary>
internal sealed class CoverageScenes(ITestOutputHelper output)
{
    public (double Held, double MedianError, double MedianHalf, int Warned) Tally(
        int scenes, int seed, Func<Random, int> references, Func<Random, bool> camera, Func<Random, double>? slant = null, bool flat = false, Func<Random, double>? lens = null)
    {
        var random = new Random(seed);
        var (held, warned, errors, halves, codes) = (0, 0, new List<double>(), new List<double>(), new List<string>());
        for (var i = 0; i < scenes; i++)
        {
            var (job, truth) = Scene(random, references(random), camera(random), (slant ?? Slant)(random), flat, (lens ?? Lens)(random));
            var length = Measurement.Run(job, new(BenchScene.Width, BenchScene.Height)).Value[0].Length.Value;
            if (truth >= length.LowMm && truth <= length.HighMm) held++;
            if (length.Warnings.Count > 0) warned++;
            foreach (var warning in length.Warnings) codes.Add(warning.Code);
            errors.Add(Math.Abs((length.ValueMm / truth) - 1));
            halves.Add((length.HighMm - length.LowMm) / 2 / truth);
        }

        errors.Sort();
        halves.Sort();
        var (share, median) = (held / (double)scenes, errors[scenes / 2]);
        output.WriteLine($"held {share:0.000}, median error {median:0.00%}, median half-width {halves[scenes / 2]:0.00%}, warned {warned} of {scenes}: {string.Join(", ", codes.CountBy(code => code).OrderBy(code => code.Key, StringComparer.Ordinal))}");
        return (share, median, halves[scenes / 2], warned);
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
