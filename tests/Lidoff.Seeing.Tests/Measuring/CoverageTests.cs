namespace Lidoff.Seeing.Tests.Measuring;

/// <summary>
/// Photographed boards with known pose, lens, height and noise: the printed 90 % must be 90 % (0.87 to 0.93 on 500, as the project's
/// issues ask), and the answers must be near. Who takes the pictures: a third stands, two thirds hands up to 10° off, each direction and
/// each size alike; one lens in eight bends. These are not the program's own priors, which are normal in each axis.
/// </summary>
public sealed class CoverageTests(ITestOutputHelper output)
{
    private readonly CoverageScenes scenes = new(output);

    [Fact]
    public void On_500_scenes_ninety_per_cent_means_ninety_per_cent()
    {
        var tally = scenes.Tally(500, seed: 11, random => 1 + random.Next(4), camera: random => random.Next(2) == 0);
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
        var tally = scenes.Tally(200, seed, _ => references, _ => camera);
        Assert.InRange(tally.Held, 0.84, references == 1 ? 0.98 : 0.96);
    }
}
