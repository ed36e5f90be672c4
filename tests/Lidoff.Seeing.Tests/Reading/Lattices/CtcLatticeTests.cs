using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Tests.Reading.Lattices;

/// <summary>Sums over paths against every path written out, and cases worked by hand from the rule of Graves et al. (2006).</summary>
public sealed class CtcLatticeTests
{
    private static readonly ReadingAlphabet Two = new("AB");
    private static readonly ReadingAlphabet Three = new("08B");

    [Fact]
    public void A_case_of_two_steps_worked_by_hand()
    {
        // Steps (blank, A, B): (0.5, 0.3, 0.2), (0.6, 0.1, 0.3).
        var lattice = CtcLattice.OfProbabilities([0.5, 0.3, 0.2, 0.6, 0.1, 0.3], Two);
        // "": blank blank. "A": A-, -A, AA. "B": likewise. "AB", "BA": one path each. "AA" wants a blank between: no room.
        Assert.Equal(0.5 * 0.6, Math.Exp(lattice.LogProbability("")), 12);
        Assert.Equal((0.3 * 0.6) + (0.5 * 0.1) + (0.3 * 0.1), Math.Exp(lattice.LogProbability("A")), 12);
        Assert.Equal((0.2 * 0.6) + (0.5 * 0.3) + (0.2 * 0.3), Math.Exp(lattice.LogProbability("B")), 12);
        Assert.Equal(0.3 * 0.3, Math.Exp(lattice.LogProbability("AB")), 12);
        Assert.Equal(0.2 * 0.1, Math.Exp(lattice.LogProbability("BA")), 12);
        Assert.Equal(double.NegativeInfinity, lattice.LogProbability("AA"));
        Assert.Equal(double.NegativeInfinity, lattice.LogProbability("C"));
    }

    [Fact]
    public void A_double_letter_needs_a_blank_between()
    {
        // Three steps, "AA" has the single path A - A.
        var lattice = CtcLattice.OfProbabilities([0.2, 0.7, 0.1, 0.6, 0.3, 0.1, 0.1, 0.8, 0.1], Two);
        Assert.Equal(0.7 * 0.6 * 0.8, Math.Exp(lattice.LogProbability("AA")), 12);
    }

    [Theory]
    [InlineData(1, 5)]
    [InlineData(2, 5)]
    [InlineData(3, 6)]
    [InlineData(4, 1)]
    public void Every_text_has_the_sum_of_its_paths(int seed, int steps)
    {
        var made = EveryPath.Made(seed, steps, Three.Classes);
        var (lattice, truth) = (CtcLattice.OfProbabilities(made, Three), EveryPath.Of(made, Three));
        foreach (var (text, p) in truth.Texts) Assert.Equal(p, Math.Exp(lattice.LogProbability(text)), 12);
        Assert.Equal(1, truth.Texts.Keys.Sum(text => Math.Exp(lattice.LogProbability(text))), 12);
    }

    [Fact]
    public void Scores_become_probabilities_by_their_temperature()
    {
        // Softmax of (0, ln 2, ln 4) is 1/7, 2/7, 4/7; at temperature 2 it is 1, √2, 2 over their sum.
        float[] scores = [0, (float)Math.Log(2), (float)Math.Log(4)];
        Assert.Equal(4 / 7.0, Math.Exp(CtcLattice.OfScores(scores, Two).LogProbability("B")), 6);
        Assert.Equal(2 / (3 + Math.Sqrt(2)), Math.Exp(CtcLattice.OfScores(scores, Two, 2).LogProbability("B")), 6);
    }

    [Fact]
    public void A_long_line_stays_in_range()
    {
        // 120 even steps of 41 classes: a blank line has the probability 41^-120, far below what a float holds.
        var alphabet = ReadingAlphabet.OfMarks;
        var lattice = CtcLattice.OfScores(new float[120 * alphabet.Classes], alphabet);
        Assert.Equal(-120 * Math.Log(41), lattice.LogProbability(""), 9);
    }

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void A_wide_beam_finds_every_text_in_its_order(int seed)
    {
        var made = EveryPath.Made(seed, 5, Three.Classes);
        var truth = EveryPath.Of(made, Three).Texts.OrderByDescending(each => each.Value).ToList();
        var beam = PrefixBeam.Search(CtcLattice.OfProbabilities(made, Three), 1000);
        foreach (var ((text, p), (found, logP)) in truth.Take(20).Zip(beam))
        {
            Assert.Equal(text, found);
            Assert.Equal(p, Math.Exp(logP), 12);
        }
    }

    [Fact]
    public void A_beam_of_sixteen_finds_the_likeliest_text()
    {
        for (var seed = 100; seed < 160; seed++)
        {
            var made = EveryPath.Made(seed, 6, Three.Classes);
            var truth = EveryPath.Of(made, Three).Texts.MaxBy(each => each.Value);
            var (text, logP) = PrefixBeam.Search(CtcLattice.OfProbabilities(made, Three), 16)[0];
            Assert.Equal((truth.Key, truth.Value), (text, Math.Round(Math.Exp(logP), 13) is var p && Math.Abs(p - truth.Value) < 1e-12 ? truth.Value : p));
        }
    }
}
