using CsCheck;
using Lidoff.Numbers.Quantities;
using Lidoff.Numbers.Typed.Codes;

namespace Lidoff.Numbers.Tests.Typed.Codes;

public sealed class CodeOddsTests
{
    [Fact]
    public void Ten_r_keeps_all_its_readings_the_letter_for_a_decimal_mark_first()
    {
        // Every reading of the checkbook's trap; which comes first is trade use, no source.
        var odds = CodeOdds.Of("10R");
        Assert.Equal(["10 Ω (RKM, IEC 60062)", "1.24 Ω ± 1 % (EIA-96)", "12.4 Ω ± 1 % (EIA-96)"], odds.Readings.Select(each => each.Reading.ToString()));
        Assert.InRange(odds.Readings[0].P, 0.9, 1);
        Assert.All(odds.Readings, each => Assert.False(each.OnHead));
    }

    [Fact]
    public void A_text_that_reads_on_its_head_is_read_both_ways()
    {
        // 10 and 100 Ω are in E3, 90 in no series of IEC 60063; 106 Ω's three digits are 10 MΩ.
        var odds = CodeOdds.Of("901");
        Assert.Contains(odds.Readings, each => (each.As, each.OnHead, each.Reading.Si, each.Reading.Unit) == ("106", true, 10e6, Units.Ohm));
        Assert.Contains(odds.Readings, each => (each.As, each.OnHead, each.Reading.Si, each.Reading.Unit) == ("901", false, 900, Units.Ohm));
        var (head, plain) = (odds.Readings.Where(each => each.OnHead).Sum(each => each.P), odds.Readings.Where(each => !each.OnHead).Sum(each => each.P));
        Assert.True(head > plain, $"{head} on its head, {plain} as it stands");
        // The same on both ways is one reading; what has a character that is none on its head has one way.
        Assert.All(CodeOdds.Of("101").Readings, each => Assert.False(each.OnHead));
        Assert.All(CodeOdds.Of("473").Readings, each => Assert.False(each.OnHead));
        Assert.Equal(["106", "u1u", null], new[] { "901", "n1n", "4" }.Select(TurnedText.Of));
    }

    [Fact]
    public void Figures_of_no_series_weigh_less()
    {
        // 473: 47 is in E3; 483: 48 in no series up to E24.
        double Ohms(string code) => CodeOdds.Of(code, PassiveSort.Resistor).Readings.Where(each => each.Reading.Rule == ResistorDigits.Rule).Sum(each => each.P);
        var (inSeries, outside) = (CodeOdds.Of("473", PassiveSort.Resistor).NoneP, CodeOdds.Of("483", PassiveSort.Resistor).NoneP);
        Assert.True(outside > 10 * inSeries, $"{inSeries} and {outside}");
        Assert.InRange(Ohms("473"), 0.9, 1);
    }

    [Fact]
    public void What_it_stands_on_leaves_only_its_own_readings()
    {
        Assert.Equal([PassiveSort.Resistor, PassiveSort.Capacitor, PassiveSort.Inductor], CodeOdds.Of("104").Readings.Select(each => each.Reading.Sort));
        Assert.Equal("100 nF (capacitor digits, EIA-198)", Assert.Single(CodeOdds.Of("104", PassiveSort.Capacitor).Readings).Reading.ToString());
        Assert.Equal(("zero-ohm link", 0.0), CodeOdds.Of("000").Readings.Select(each => (each.Reading.Rule, each.Reading.Si)).Single());
        var nothing = CodeOdds.Of("XYZZY");
        Assert.Equal((0, 1.0), (nothing.Readings.Count, nothing.NoneP));
        Assert.Equal(1, CodeOdds.Of(null).NoneP);
    }

    [Fact]
    public void What_a_machine_read_is_weighed_by_what_values_there_are()
    {
        // 8B2 is no code and 882 in no series: 682 wins although the machine holds it for less likely.
        var odds = CodeOdds.OfRead([("882", 0.5), ("682", 0.3), ("8B2", 0.1)], PassiveSort.Resistor);
        Assert.Equal("682", odds.Readings[0].As);
        Assert.True(odds.NoneP >= 0.1);
        Assert.Contains(CodeOdds.OfRead([("3P3", 0.9)]).Readings, each => each.As == "3P3" && each.Reading.ToString() == "3.3 pF (RKM, IEC 60062)");
    }

    [Fact]
    public void Whatever_the_text_everything_sums_to_one() => Gen.OneOf(Gen.String, Gen.String[Gen.Char["0123456789RKMkpnuµmLXYZABCDEFVJ "], 0, 7])
        .Sample(
            text =>
            {
                var odds = CodeOdds.Of(text);
                return Math.Abs(odds.Readings.Sum(each => each.P) + odds.NoneP - 1) < 1e-9 && odds.Readings.All(each => each.P is >= 0 and <= 1) && odds.NoneP is >= 0 and <= 1;
            },
            iter: 2000);
}
