using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Measuring.Rulers;

namespace Lidoff.Seeing.Tests.Measuring.Rulers;

/// <summary>Lengths anywhere in a picture whose only scale is a ruler that was found in it, against the pinhole that drew it.</summary>
public sealed class RulerCoverageTests(ITestOutputHelper output)
{
    private const int Scenes = 10, Each = 8;

    // Of 30 scenes and 8 lengths each 0.99, 0.90 and 0.84 held at 0, 10 and 20°; by the ruler as one length 1.00, 0.88 and 0.41, with an interval four times as wide at 0°.
    [Theory]
    [InlineData(0, 0.9, 0.02)]
    [InlineData(15, 0.75, 0.12)]
    public void A_ruler_tells_the_slant_along_it(double slant, double least, double widest)
    {
        var (held, all, halves) = (0, 0, new List<double>());
        for (var seed = 5000; seed < 5000 + Scenes; seed++)
        {
            var scene = new AskewRuler(seed, slant);
            if (RulerProposals.Of(scene.Picture()).FirstOrDefault(each => each.TickMm is not null) is not { } ruler) continue;
            var job = new MeasureJob { Image = "x", References = ruler.Reference(ruler.TickMm!.Value).Parts(0), Targets = [] };
            var picture = ScaledPicture.Of(job, new(AskewRuler.Width, AskewRuler.Height)).Value;
            var random = new Random(seed);
            for (var i = 0; i < Each; i++)
            {
                var (a, b) = (Place(random), Place(random));
                if (a.DistanceTo(b) < 250) continue;
                var ((x1, y1), (x2, y2)) = (scene.At(a.X, a.Y), scene.At(b.X, b.Y));
                var truth = Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2)));
                var length = picture.Length(new("t", BenchScene.Clicked(random, a, 1), BenchScene.Clicked(random, b, 1))).Value;
                all++;
                if (truth >= length.LowMm && truth <= length.HighMm) held++;
                halves.Add((length.HighMm - length.LowMm) / 2 / truth);
                Assert.DoesNotContain(length.Warnings, warning => warning.Code is "reference-disagrees" or "short-reference");
            }
        }

        halves.Sort();
        output.WriteLine($"at {slant}°: {held} of {all} held, half of the interval {halves[all / 2]:0.00%} in the median");
        Assert.InRange(held / (double)all, least, 1);
        Assert.InRange(halves[all / 2], 0, widest);
    }

    private static PicturePoint Place(Random random) => new(50 + (random.NextDouble() * (AskewRuler.Width - 100)), 50 + (random.NextDouble() * (AskewRuler.Height - 100)));
}
