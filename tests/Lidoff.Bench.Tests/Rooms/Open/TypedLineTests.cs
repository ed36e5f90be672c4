using Lidoff.Bench.Rooms.Open.Typed;

namespace Lidoff.Bench.Tests.Rooms.Open;

/// <summary>Specimens, states and masses on one line; the grammar is ours.</summary>
public sealed class TypedLineTests
{
    [Fact]
    public void A_specimen_in_one_line() => Assert.Equal(
        new SpecimenTyped("A", "second-hand band, scratched", "a flea market", "2026-01-12", "EU grey", true, 23.4, 0.05),
        SpecimenTyped.Read("A second-hand band, 23.4 g ± 0.05, scratched, from a flea market, bought 2026-01-12, revision EU grey, may be destroyed").Value);

    [Theory]
    [InlineData("A second-hand band, 23,4 g", 23.4)]
    [InlineData("A: band, 23.4 g", 23.4)]
    [InlineData("A 23.4 g", 23.4)]
    [InlineData("A, 1.2 kg", 1200.0)]
    [InlineData("A band with 3 buttons, 2 lamps", null)]
    public void Its_mass_is_what_has_a_unit_of_mass(string typed, double? grams)
    {
        var specimen = SpecimenTyped.Read(typed).Value;
        Assert.Equal("A", specimen.Specimen);
        Assert.Equal(grams, specimen.MassG);
    }

    [Fact]
    public void A_specimen_without_a_name_is_asked_for() => Assert.Equal("Give the specimen a short name first, such as A.", SpecimenTyped.Read("  ").Faults[0].Say);

    [Fact]
    public void A_mass_that_can_be_read_two_ways_is_asked_about() => Assert.Contains("1.234 or 1234?", SpecimenTyped.Read("A band, 1,234 g").Faults[0].Say, StringComparison.Ordinal);

    [Fact]
    public void A_state_in_one_line() => Assert.Equal(
        new StateTyped("idle", "nothing lit", "off", "two short", 28_800, 6.1, 0.4),
        StateTyped.Read("idle: nothing lit, 6.1 µA ± 0.4, lights off, press two short, lasts 8 h").Value);

    [Theory]
    [InlineData("charging: red light, -45 mA", "charging", -45_000.0)]
    [InlineData("idle, 6,1 uA", "idle", 6.1)]
    [InlineData("night lamp", "night lamp", null)]
    public void A_state_keeps_the_name_it_was_given(string typed, string name, double? current)
    {
        var state = StateTyped.Read(typed).Value;
        Assert.Equal(name, state.Name);
        Assert.Equal(current, state.CurrentUa);
    }

    [Fact]
    public void A_state_tells_each_fault()
    {
        var faults = StateTyped.Read("idle: 5..7 µA, lasts long").Faults.Select(fault => fault.Say).ToList();
        Assert.Equal("\"5..7 µA\" is a range; write the current as 6.1 µA ± 0.4.", faults[0]);
        Assert.Equal("\"long\" does not begin with a number.", faults[1]);
    }

    [Fact]
    public void A_specimen_is_weighed_to_its_last_digit_and_bought_somewhere_or_on_a_day()
    {
        var specimen = SpecimenTyped.Read("A a worn tag, 11 g, bought second-hand").Value;
        Assert.Equal((11.0, 1.0, "bought second-hand", ""), (specimen.MassG!.Value, specimen.UG!.Value, specimen.From, specimen.Bought));
        Assert.Equal("2026-01-12", SpecimenTyped.Read("A tag, bought 2026-01-12").Value.Bought);
    }

    [Theory]
    [InlineData("B1 3.61 g ± 0.02", "B1", 3.61, 0.02)]
    [InlineData("whole 21.4 g", "", 21.4, 0.1)]
    [InlineData("21.40", "", 21.4, 0.01)]
    [InlineData("CASE 4,2", "CASE", 4.2, 0.1)]
    [InlineData("CASE 38", "CASE", 38, 1.0)]
    [InlineData("CASE 130 mg", "CASE", 0.13, 0.001)]
    public void A_mass_in_one_line_and_without_a_doubt_one_unit_of_its_last_digit(string typed, string spot, double g, double u)
    {
        var mass = MassTyped.Read(typed).Value;
        Assert.Equal((spot, g, u), (mass.Spot, mass.G, mass.UG ?? mass.DigitG));
    }

    [Theory]
    [InlineData("B1", "How much does B1 weigh? Write, for example, B1 3.61 g.")]
    [InlineData("", "Write what was weighed and how much: B1 3.61 g.")]
    [InlineData("B1 3..4 g", "\"3..4 g\" is a range; a scale shows one value: write 3.61 g ± 0.01.")]
    public void A_mass_that_is_none_is_said(string typed, string says) => Assert.Equal(says, MassTyped.Read(typed).Faults[0].Say);
}
