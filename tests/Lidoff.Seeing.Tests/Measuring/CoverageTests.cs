using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>Jobs with known truth and known noise: the printed 90 % must be 90 % (0.87 to 0.93 on 500, as the project's issues ask).</summary>
public sealed class CoverageTests
{
    private const int Jobs = 500;

    [Theory]
    [InlineData(1, 1, false)]
    [InlineData(2, 2, false)]
    [InlineData(3, 1, true)]
    [InlineData(4, 3, true)]
    public void Ninety_per_cent_means_ninety_per_cent(int seed, int references, bool heights)
    {
        var random = new Random(seed);
        var (held, warned) = (0, 0);
        for (var job = 0; job < Jobs; job++)
        {
            var scale = 20 + (random.NextDouble() * 80);
            var click = 0.5 + random.NextDouble();
            var camera = 60 + (random.NextDouble() * 200);
            var known = Enumerable.Range(0, references).Select(_ => Reference(random, scale, click, camera, heights ? random.NextDouble() * 2 : 0)).ToList();
            var height = heights ? random.NextDouble() * 3 : 0;
            var (from, to) = Chord(random, 100, 800);
            var truth = from.DistanceTo(to) / scale * (camera - height) / camera;
            var length = Measured.One(known, new("t", Clicked(random, from, click), Clicked(random, to, click), height), click, camera);
            if (truth >= length.LowMm && truth <= length.HighMm) held++;
            if (length.Warnings.Count > 0) warned++;
        }

        Assert.InRange(held / (double)Jobs, 0.87, 0.93);
        // Once in five hundred is the program's own promise for clean pictures.
        Assert.InRange(warned, 0, 5);
    }

    [Fact]
    public void An_unknown_camera_distance_is_held_for_usual_benches()
    {
        // Log-uniform between a wide phone lens (0.7 long sides) and a macro lens (4): not the prior itself, but where benches are.
        var random = new Random(5);
        var held = 0;
        for (var job = 0; job < Jobs; job++)
        {
            var scale = 20 + (random.NextDouble() * 80);
            var camera = 4000 / scale * 0.7 * Math.Pow(4 / 0.7, random.NextDouble());
            var height = camera * 0.05 * random.NextDouble();
            var reference = Reference(random, scale, 1, camera, 0);
            var (from, to) = Chord(random, 100, 800);
            var truth = from.DistanceTo(to) / scale * (camera - height) / camera;
            var length = Measured.One([reference], new("t", Clicked(random, from, 1), Clicked(random, to, 1), height));
            if (truth >= length.LowMm && truth <= length.HighMm) held++;
        }

        Assert.InRange(held / (double)Jobs, 0.87, 0.97);
    }

    private static ReferenceLength Reference(Random random, double scale, double click, double camera, double height)
    {
        var (from, to) = Chord(random, 400, 2500);
        var truth = from.DistanceTo(to) / scale * (camera - height) / camera;
        var u = truth * 0.003 * random.NextDouble();
        return new(Clicked(random, from, click), Clicked(random, to, click), truth + (u * Normal(random)), u, height);
    }

    private static (PicturePoint From, PicturePoint To) Chord(Random random, double least, double most)
    {
        while (true)
        {
            var from = new PicturePoint(100 + (random.NextDouble() * 3800), 100 + (random.NextDouble() * 2800));
            var to = new PicturePoint(100 + (random.NextDouble() * 3800), 100 + (random.NextDouble() * 2800));
            var length = from.DistanceTo(to);
            if (length >= least && length <= most) return (from, to);
        }
    }

    private static PicturePoint Clicked(Random random, PicturePoint point, double click) => new(point.X + (click * Normal(random)), point.Y + (click * Normal(random)));

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
