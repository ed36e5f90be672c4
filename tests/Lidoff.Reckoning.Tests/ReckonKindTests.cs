using System.Text.Json;
using Lidoff.Numbers.Failing;
using Lidoff.Reckoning.Bound;
using Lidoff.TestSupport;

namespace Lidoff.Reckoning.Tests;

public sealed class ReckonKindTests
{
    [Fact]
    public void Inputs_are_typed_values_numbers_or_references()
    {
        var binding = Read("""{"reckoning":"R1","calculation":"runtime","inputs":{"capacity":"122 mAh ± 6","sleep_current":{"from":"R2"},"reserve":10},"says":"How long does it run?"}""").Value;
        Assert.Equal(
            new ReckonBinding("R1", "runtime", [new("capacity", "122 mAh ± 6", ""), new("sleep_current", "", "R2"), new("reserve", "10", "")], "How long does it run?"),
            binding);
    }

    [Fact]
    public void Every_fault_is_named_at_once()
    {
        var faults = Read("""{"reckoning":"runtime","inputs":{"capacity":true,"reserve":"","sleep_current":{"of":"R2"}}}""").Faults;
        Assert.Equal(["reckoning", "calculation", "inputs.capacity", "inputs.reserve", "inputs.sleep_current"], faults.Select(fault => fault.Where));
        Assert.Equal("\"reckoning\" should be a designator such as R1.", faults[0].Say);
        Assert.Equal("\"inputs.capacity\" should be a value such as \"122 mAh ± 6\", a number, or {\"from\": \"length:U1:long side\"}.", faults[2].Say);
    }

    [Theory]
    [InlineData("""{"reckoning":"R1","calculation":"runtime"}""")]
    [InlineData("""{"reckoning":"R1","calculation":"runtime","inputs":[1]}""")]
    public void Inputs_are_an_object(string payload) => Assert.Equal("inputs", Assert.Single(Read(payload).Faults).Where);

    [Fact]
    public void Wrong_values_of_all_sorts_are_refused_and_never_thrown_at() =>
        Assert.Empty(KindLines.Complaints(new ReckonKind(), """{"reckoning":"R1","calculation":"runtime","inputs":{"capacity":"122"},"says":"How long?"}"""));

    [Theory]
    [InlineData("""{"a":"\ud800"}""", "inputs.a")]
    [InlineData("""{"\ud800":"1"}""", "inputs.?")]
    [InlineData("""{"a":{"from":"\ud800"}}""", "inputs.a")]
    [InlineData("""{"a":"1","a":"2"}""", "inputs.a")]
    public void Text_that_is_none_is_refused_at_its_place(string inputs, string where) =>
        Assert.Equal(where, Assert.Single(Read($$"""{"reckoning":"R1","calculation":"runtime","inputs":{{inputs}}}""").Faults).Where);

    private static Outcome<ReckonBinding> Read(string payload) => new ReckonKind().Read(JsonDocument.Parse(payload).RootElement, 1);
}
