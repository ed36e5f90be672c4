using Lidoff.Evidence.Pictures;
using Lidoff.Seeing.Measuring.Rulers;

namespace Lidoff.Seeing.Tests.Measuring.Rulers;

/// <summary>Rulers that lie askew under a camera that leans: found and read against the pinhole that drew them, and combs of the same lines that are none.</summary>
public sealed class SlantedRulerTests(ITestOutputHelper output)
{
    private const int Scenes = 6;

    [Theory]
    [InlineData(5)]
    [InlineData(10)]
    [InlineData(20)]
    public void A_ruler_is_found_at_a_slant_and_never_read_wrong(double slant)
    {
        var (found, told, pointed) = (0, 0, 0);
        for (var seed = 1000; seed < 1000 + Scenes; seed++)
        {
            var scene = new AskewRuler(seed, slant);
            var picture = scene.Picture();
            var rulers = RulerProposals.Of(picture);
            Assert.All(rulers, ruler => Assert.True(Right(scene, ruler.First, ruler.Last, ruler.Gaps, ruler.TickMm), $"{seed} at {slant}°: {ruler}"));
            if (rulers.Count > 0) found++;
            if (rulers.Any(ruler => ruler.TickMm is not null)) told++;
            // Pointed along the short lines, from the first that shows to the last.
            var seen = Enumerable.Range(0, scene.Lines).Select(line => scene.Show(line * scene.Tick, 1.2 * scene.Tick)).Where(at => at is { X: > 5 and < AskewRuler.Width - 5, Y: > 5 and < AskewRuler.Height - 5 }).ToList();
            if (RulerSearch.Find(picture, seen[0], seen[^1]) is { } read && Right(scene, read.First, read.Last, read.Gaps, scene.Tick)) pointed++;
        }

        output.WriteLine($"at {slant}°: {found} of {Scenes} found, {told} with their unit; pointed at, {pointed} read");
        // Of 18 each at 0, 5, 10, 15 and 20° all 18 were found, 16 or 17 with their unit; before places were fitted as a pinhole shows them, 18, 2, 1, 1 and 1.
        Assert.InRange(found, Scenes - 1, Scenes);
        Assert.InRange(told, Scenes - 2, Scenes);
        Assert.Equal(Scenes, pointed);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(15)]
    public void Teeth_that_are_all_alike_are_no_ruler(double slant)
    {
        for (var seed = 2000; seed < 2003; seed++) Assert.Empty(RulerProposals.Of(new AskewRuler(seed, slant, comb: true).Picture()));
    }

    // Its ends lie on the ruler, as many lines apart as it says, to half a per cent; where the unit is open, every second line is a ruler as well.
    private static bool Right(AskewRuler scene, PicturePoint first, PicturePoint last, int gaps, double? tick)
    {
        var ((a, across), (b, acrossToo)) = (scene.At(first.X, first.Y), scene.At(last.X, last.Y));
        var each = Math.Sqrt(((a - b) * (a - b)) + ((across - acrossToo) * (across - acrossToo))) / gaps;
        return Math.Abs(across) < 8 * scene.Tick && Math.Abs(acrossToo) < 8 * scene.Tick
            && (tick is { } known ? Math.Abs((each / known) - 1) < 0.005 : Math.Abs((each / scene.Tick) - Math.Round(each / scene.Tick)) < 0.01);
    }
}
