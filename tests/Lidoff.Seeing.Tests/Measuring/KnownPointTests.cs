using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring;

namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>A plane's slant from places known on it: four give it, three or a line do not.</summary>
public sealed class KnownPointTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(8)]
    [InlineData(16)]
    public void Four_known_places_give_lengths_in_every_direction_and_corner(double slant)
    {
        var scene = new BenchScene(slant, 20, 5, 1, 50, 0);
        var random = new Random(8);
        var known = new[] { (-25.0, -18.0), (25, -18), (25, 18), (-25, 18) }
            .Select(at => new KnownPoint(BenchScene.Clicked(random, scene.Show(at.Item1, at.Item2, 0), 0.7), at.Item1, at.Item2, 0.02)).ToList();
        foreach (var (x1, y1, x2, y2) in new[] { (-24.0, -17.0, -24.0, -5.0), (10, 15, 24, 15), (20, -15, 5, 12) })
        {
            var truth = Math.Sqrt(((x1 - x2) * (x1 - x2)) + ((y1 - y2) * (y1 - y2)));
            var length = Run(known, new("t", scene.Show(x1, y1, 0), scene.Show(x2, y2, 0))).Value[0].Length.Value;
            Assert.Equal(truth, length.ValueMm, 0.006 * truth);
            Assert.InRange(length.UMm / truth, 0.0005, 0.006);
            // Nobody says so of a camera held straight; of a strong slant it is said with every length.
            if (slant == 0) Assert.Empty(length.Warnings);
            if (slant == 16) Assert.Contains("tilt", length.Warnings.Select(warning => warning.Code));
        }
    }

    [Fact]
    public void Three_places_are_refused_with_what_would_do()
    {
        var faults = Run([At(100, 100, 0, 0), At(1100, 100, 10, 0), At(100, 1100, 0, 10)], new("t", new(1, 1), new(9, 9))).Faults;
        Assert.Equal(
            "3 known places cannot tell a slant from a stretch: four are needed, no three of them on one line. For fewer, give the lengths between them as references.",
            Assert.Single(faults).Say);
    }

    [Fact]
    public void Places_on_one_line_or_three_of_four_on_one_are_refused()
    {
        Assert.StartsWith("The known places lie on one line", Run([At(0, 0, 0, 0), At(100, 100, 1, 1), At(200, 200, 2, 2), At(300, 300, 3, 3)], new("t", new(1, 1), new(9, 9))).Faults[0].Say, StringComparison.Ordinal);
        Assert.StartsWith("The known places lie on one line", Run([At(0, 0, 0, 0), At(100, 0, 1, 0), At(200, 0, 2, 0), At(100, 300, 1, 3)], new("t", new(1, 1), new(9, 9))).Faults[0].Say, StringComparison.Ordinal);
    }

    [Fact]
    public void One_place_twice_and_one_outside_are_named()
    {
        var faults = Run([At(0, 0, 0, 0), At(5000, 0, 1, 0), At(0, 0, 2, 5), At(100, 300, 1, 3)], new("t", new(1, 1), new(9, 9))).Faults;
        Assert.Equal(["“points[1].at” lies at (5000, 0), outside the picture of 4000 × 3000 pixels.", "The known place at (0, 0) is given twice, in the picture or on the board."], faults.Select(fault => fault.Say));
    }

    private static KnownPoint At(double x, double y, double mmX, double mmY) => new(new(x, y), mmX, mmY);

    private static Outcome<IReadOnlyList<MeasuredTarget>> Run(IReadOnlyList<KnownPoint> known, TargetLength target) => Measurement.Run(
        new() { Image = "x", References = [], KnownPoints = known, Targets = [new("t", target)], ClickPx = 0.7 }, new(BenchScene.Width, BenchScene.Height));
}
