using Lidoff.Seeing.Reading.Lattices;

namespace Lidoff.Seeing.Tests.Reading.Lattices;

public sealed class LineReadingTests
{
    private static readonly ReadingAlphabet Three = new("08B");

    private const double Sure = 0.97;

    /// <summary>A lattice in which each character stands a step with a blank behind it; a place may be divided among several.</summary>
    private static CtcLattice Spelt(params (char Symbol, double P)[][] places)
    {
        var rows = new List<double>();
        foreach (var place in places)
        {
            var row = new double[Three.Classes];
            foreach (var (symbol, p) in place) row[symbol == '-' ? 0 : Three.ClassesOf(symbol.ToString())![0]] = p;
            var (zeros, left) = (row.Count(p => p == 0), 1 - row.Sum());
            for (var c = 0; c < row.Length; c++) if (row[c] == 0) row[c] = left / zeros;
            rows.AddRange(row);
            rows.AddRange([1, 0, 0, 0]);
        }

        return CtcLattice.OfProbabilities([.. rows], Three);
    }

    [Fact]
    public void A_divided_place_keeps_both_and_nothing_is_made_up()
    {
        // The second place: 0.6 eight, 0.3 B, a tenth blank and zero alike; blanks stand between, so places are independent.
        var read = LineReading.Of([Spelt([('0', Sure)], [('8', 0.6), ('B', 0.3)])]);
        Assert.Equal("08", read.Text);
        Assert.Equal(Sure * 0.6, read.P, 9);
        Assert.Equal("08", read.Readings[0].Text);
        Assert.Equal(("0B", Sure * 0.3), (read.Readings[1].Text, Math.Round(read.Readings[1].P, 12)));
        var second = read.Places[1];
        Assert.Equal(["8", "B"], second.Top.Take(2).Select(each => each.Symbol));
        // "0" alone also comes of a blank first place (0.01) and a zero in the second (0.05): that much more for nothing being there.
        var all = Sure + (0.01 * 0.05);
        Assert.Equal(Sure * 0.6 / all, second.Top[0].P, 9);
        Assert.Equal(Sure * 0.3 / all, second.Top[1].P, 9);
        Assert.Equal(((Sure * 0.05) + (0.01 * 0.05)) / all, second.Top.Single(each => each.Symbol.Length == 0).P, 9);
        Assert.Equal(0.25, read.Places[0].Along, 0.13);
        Assert.Equal(0.75, second.Along, 0.13);
    }

    [Fact]
    public void A_place_where_nothing_reaches_one_half_reads_as_a_question_mark_with_its_alternatives()
    {
        var read = LineReading.Of([Spelt([('0', Sure)], [('8', 0.45), ('B', 0.35), ('0', 0.15)])]);
        Assert.Equal("0?", read.Text);
        Assert.Equal("08", read.Readings[0].Text);
        Assert.Equal(["8", "B", "0", ""], read.Places[1].Top.Select(each => each.Symbol));
    }

    [Fact]
    public void A_symbol_that_may_be_one_more_is_a_place_of_its_own()
    {
        var read = LineReading.Of([Spelt([('0', Sure)], [('-', 0.8), ('8', 0.2)])]);
        Assert.Equal("0", read.Text);
        var extra = Assert.Single(read.Places, place => place.Extra);
        Assert.Equal("", extra.Top[0].Symbol);
        Assert.Equal(0.8, extra.Top[0].P, 9);
        Assert.Equal(0.2, extra.Top.Single(each => each.Symbol == "8").P, 9);
    }

    [Fact]
    public void Places_hold_what_all_paths_hold()
    {
        for (var seed = 40; seed < 60; seed++)
        {
            var made = EveryPath.Made(seed, 6, Three.Classes);
            var truth = EveryPath.Of(made, Three);
            var read = LineReading.Of([CtcLattice.OfProbabilities(made, Three)]);
            Assert.Equal(truth.Texts.Values.Max(), read.P, 9);
            var best = read.Readings[0].Text;
            var i = 0;
            foreach (var place in read.Places)
            {
                Assert.Equal(1, place.Rest + place.Top.Sum(each => each.P), 9);
                if (place.Extra || (i + 1 < best.Length && best[i + 1] == best[i]))
                {
                    if (!place.Extra) i++;
                    continue;
                }

                var all = Three.Symbols.Select(c => truth[best[..i] + c + best[(i + 1)..]]).Sum() + truth[best.Remove(i, 1)];
                foreach (var (symbol, p) in place.Top) Assert.Equal(truth[best[..i] + symbol + best[(i + 1)..]] / all, p, 9);
                i++;
            }
        }
    }

    [Fact]
    public void Two_pictures_multiply_and_settle_what_either_leaves_open()
    {
        // Picture one: 8 against B as 0.5 to 0.4; picture two: as 0.3 to 0.65. By Bayes' rule with even priors 0.15 to 0.26.
        var (one, two) = (Spelt([('0', Sure)], [('8', 0.5), ('B', 0.4)]), Spelt([('0', Sure)], [('8', 0.3), ('B', 0.65)]));
        var both = LineReading.Of([one, two]);
        Assert.Equal("0B", both.Text);
        var place = both.Places[1];
        Assert.Equal(0.26 / 0.15, place.Top[0].P / place.Top.Single(each => each.Symbol == "8").P, 9);
        Assert.InRange(both.P, 0.55, 0.65);
        Assert.Equal(both, LineReading.Of([two, one]));
    }

    [Fact]
    public void A_line_temperature_above_one_makes_whole_readings_humbler()
    {
        var lattice = Spelt([('0', Sure)], [('8', 0.9), ('B', 0.05)]);
        var (plain, humble) = (LineReading.Of([lattice]), LineReading.Of([lattice], 1.5));
        Assert.True(humble.P < plain.P);
        Assert.Equal(plain.Readings[0].Text, humble.Readings[0].Text);
        // Odds of the first two become their power 1/1.5.
        Assert.Equal(Math.Pow(plain.Readings[0].P / plain.Readings[1].P, 1 / 1.5), humble.Readings[0].P / humble.Readings[1].P, 9);
    }

    [Fact]
    public void A_blank_line_is_empty()
    {
        var read = LineReading.Of([Spelt([('-', 0.99)], [('-', 0.99)])]);
        Assert.True(read.IsEmpty);
        Assert.Equal("", read.Text);
    }
}
