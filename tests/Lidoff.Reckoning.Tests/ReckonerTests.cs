using Lidoff.Numbers.Failing;
using Lidoff.Reckoning.Reckon;

namespace Lidoff.Reckoning.Tests;

public sealed class ReckonerTests
{
    private static readonly Reckoner Reckoner = new(new NoColumns());

    [Fact]
    public void The_falling_ball_of_NIST_TN_1900_E3_parts_first_order_from_Monte_Carlo()
    {
        var result = Reckon("falling_ball_viscosity", "known=4.63±0.0463", "time=61±6.1", "time_known=36.6±5.49", "ball=2217±0.5", "density=1180±0.5", "density_known=810±0.5").Value;
        Assert.Equal(5.69, result.Info.Unit.FromSi(result.Value.Value), 0.005);
        // Printed: 1.11 by Monte Carlo with 8.39 as the upper end of 95 %; the linear figure worked independently is 1.027.
        Assert.Equal(1.11, result.Info.Unit.SpanFromSi(result.Value.U), 0.04);
        Assert.Equal(1.027, result.Info.Unit.SpanFromSi(result.Value.FirstOrderU), 0.001);
        Assert.Equal("time_known", result.Value.Shares.MaxBy(share => share.Share)!.Input);
        Assert.Equal(1, result.Value.Shares.Sum(share => share.Share), 1e-12);
    }

    [Fact]
    public void The_thermal_expansion_of_NIST_TN_1900_E13_has_its_printed_uncertainty()
    {
        var result = Reckon("thermal_expansion", "length_cold=1.4999±0.0001", "length_hot=1.5021 m ± 0.2 mm", "cold=288.15±0.02", "hot=373.10(5)").Value;
        Assert.Equal(17.266, result.Info.Unit.FromSi(result.Value.Value), 0.0005);
        Assert.Equal(1.7555, result.Info.Unit.SpanFromSi(result.Value.FirstOrderU), 0.0005);
        Assert.Equal(1.74, result.Info.Unit.SpanFromSi(result.Value.U), 0.03);
    }

    [Fact]
    public void The_energy_printed_on_a_pouch_becomes_its_charge_with_an_interval()
    {
        var result = Reckon("capacity_from_energy", "energy=0.45 Wh", "voltage=3.6..3.8").Value;
        var unit = result.Info.Unit;
        Assert.Equal(121.6, unit.FromSi(result.Value.Value), 0.05);
        // Uniform from 3.6 to 3.8 V: 5 % and 95 % lie at 3.79 and 3.61 V.
        Assert.Equal(0.45e3 / 3.79, unit.FromSi(result.Value.Interval90.Low), 0.05);
        Assert.Equal(0.45e3 / 3.61, unit.FromSi(result.Value.Interval90.High), 0.05);
    }

    [Theory]
    [InlineData("capacity=122 mAh ± 6", 122, 6)]
    [InlineData("capacity=0.122 Ah", 122, 0)]
    [InlineData("capacity=439.2 C", 122, 0)]
    [InlineData("capacity=0,122 Ah", 122, 0)]
    public void Values_are_read_as_people_type_them(string capacity, double value, double u)
    {
        var input = Reckon("runtime", capacity, "sleep_current=5 µA").Value.Inputs[0];
        Assert.Equal(value, input.Input.Unit.FromSi(input.Value.Value), 1e-9);
        Assert.Equal(u, input.Input.Unit.SpanFromSi(input.Value.U), 1e-9);
    }

    [Theory]
    [InlineData("self_discharge=2 %/month")]
    [InlineData("self_discharge=2")]
    public void A_unit_that_only_a_calculation_has_may_be_typed(string typed) =>
        Assert.Equal(2, Reckon("runtime", "capacity=100", "sleep_current=5", typed).Value.Inputs[5] is var input ? input.Input.Unit.FromSi(input.Value.Value) : 0, 1e-12);

    [Fact]
    public void Every_fault_of_a_request_comes_at_once_with_key_range_and_unit()
    {
        var faults = Reckon("runtime", "capacity=2e9", "capacty=3", "event_rate=4", "event_rate=5", "reserve=3 V", "event_charge=much").Faults;
        Assert.Equal(
            [
                "runtime has no input \"capacty\". Is it capacity?",
                "\"capacity\" should be from 0.01 to 1000000 mAh; 2000000000 mAh is outside.",
                "\"sleep_current\" is missing: current between events, regulator and divider included, from 0.001 to 10000000 µA.",
                "\"much\" does not begin with a number.",
                "\"event_rate\" is given more than once; it takes one value from 0 to 36000000 1/h.",
                "3 V is in V, which is voltage; here a pure number is wanted, for example in %.",
            ],
            faults.Select(fault => fault.Say));
        Assert.Equal(["capacty", "capacity", "sleep_current", "event_charge", "event_rate", "reserve"], faults.Select(fault => fault.Where));
    }

    [Theory]
    [InlineData("i2c_pullup", "There is no calculation \"i2c_pullup\". Is it i2c_pullup_least or i2c_pullup_most?")]
    [InlineData("run-time", "There is no calculation \"run-time\". Is it runtime?")]
    [InlineData("zzzzzzzzzzzzzzzzzzzzz", "There is no calculation \"zzzzzzzzzzzzzzzzzzzzz\"; `lidoff reckon --list` names all of them.")]
    public void An_unknown_name_is_answered_with_the_nearest_ones(string name, string sentence) =>
        Assert.Equal(sentence, Assert.Single(Reckon(name).Faults).Say);

    [Theory]
    [InlineData("supply=0.5..3.3", "\"supply\" should be from 0.8 to 6 V; 0.5 V is outside.")]
    [InlineData("supply=3.3..3.6..7", "\"supply\" should be from 0.8 to 6 V; 7 V is outside.")]
    public void A_range_has_to_lie_inside_the_allowed_one_as_a_whole(string supply, string sentence) =>
        Assert.Equal(sentence, Assert.Single(Reckon("i2c_pullup_least", supply).Faults).Say);

    [Fact]
    public void What_was_assumed_and_what_was_left_out_is_said()
    {
        var cautions = Reckon("runtime", "capacity=100", "sleep_current=5±4").Value.Cautions;
        Assert.Contains("Not given, so assumed: event_charge 0 µC, event_rate 0 1/h, reserve 0 %, self_discharge 0 %/month.", cautions);
        Assert.Contains(cautions, caution => caution.Contains("of the draws fell outside what the inputs may be", StringComparison.Ordinal));
        Assert.Contains(ReckoningSentences.Parted, cautions);
    }

    [Fact]
    public void The_same_seed_gives_the_same_bits_and_another_one_others()
    {
        string[] inputs = ["energy=0.45±0.01", "voltage=3.7±0.05"];
        var first = Reckon("capacity_from_energy", inputs).Value.Value;
        Assert.Equal(first.U, Reckon("capacity_from_energy", inputs).Value.Value.U);
        var other = Reckoner.Reckon(new("capacity_from_energy", Typed(inputs), 2)).Value.Value;
        Assert.NotEqual(first.U, other.U);
        Assert.Equal(first.Value, other.Value);
    }

    [Fact]
    public void Less_cell_never_lasts_longer_and_more_doubt_never_narrows()
    {
        var small = Reckon("runtime", "capacity=100±5", "sleep_current=5").Value.Value;
        var large = Reckon("runtime", "capacity=110±5", "sleep_current=5").Value.Value;
        var doubtful = Reckon("runtime", "capacity=100±10", "sleep_current=5").Value.Value;
        Assert.True(small.Value < large.Value);
        Assert.True(doubtful.U > small.U * 1.9);
    }

    [Fact]
    public void No_file_is_read_where_none_may_be() =>
        Assert.Equal(
            "\"voltage\" names a column of a file; files are only read on the command line.",
            Assert.Single(Reckon("capacity_from_energy", "energy=1", "voltage=a.csv#v").Faults).Say);

    private static Outcome<ReckonResult> Reckon(string name, params string[] inputs) => Reckoner.Reckon(new(name, Typed(inputs)));

    private static List<TypedInput> Typed(string[] inputs) => [.. inputs.Select(each => each.Split('=', 2)).Select(pair => new TypedInput(pair[0], pair[1]))];
}
