namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>
/// Pictures that really were taken square to the board (within 1.5°), from a stand. Lidoff cannot know that: it goes on believing in hands too,
/// whose pictures its intervals must hold as well (<see cref="CoverageTests"/>). So on these they hold more than nine in ten, the more the less the
/// known lengths tell of a slant. How often they hold and how wide they are is bounded from both sides: below 0.9 they would be wrong, and where
/// they always hold only their width says whether they still say something.
/// </summary>
public sealed class SquareCoverageTests(ITestOutputHelper output)
{
    private readonly CoverageScenes scenes = new(output);

    [Theory]
    // Measured: held 1.000, 1.000, 0.994, 0.952; binomial, n = 500: standard deviations 0.002 (by the rule of three), 0.002, 0.0035 and 0.0096, of which
    // three are allowed. Half of the interval in the middle one of 500: 3.6, 5.3, 1.5 and 0.46 % of the length, of which a tenth more is allowed.
    [InlineData(51, 1, true, 0.994, 1.0, 4.0)]
    [InlineData(52, 1, false, 0.994, 1.0, 5.8)]
    [InlineData(53, 2, true, 0.983, 1.0, 1.65)]
    [InlineData(54, 5, true, 0.923, 0.981, 0.51)]
    public void On_500_square_pictures_the_interval_holds_and_is_no_wider_than_it_must(int seed, int references, bool camera, double least, double most, double percent)
    {
        var tally = scenes.Tally(500, seed, _ => references, _ => camera, slant: random => 1.5 * random.NextDouble(), flat: true, lens: _ => 0);
        Assert.InRange(tally.Held, least, most);
        Assert.InRange(100 * tally.MedianHalf, 0, percent);
        // Of a slant or a lens that is not there nobody is told more than once or twice in five hundred (measured: 0, 0, 0, 1).
        Assert.InRange(tally.Warned, 0, 2);
    }
}
