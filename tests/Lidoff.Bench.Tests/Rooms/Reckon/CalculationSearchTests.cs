using Lidoff.Bench.Rooms.Reckon;
using Lidoff.Bench.Rooms.Reckon.Binding;
using Lidoff.Reckoning;

namespace Lidoff.Bench.Tests.Rooms.Reckon;

/// <summary>What a maker would type, and the calculation that answers it. The words are common practice, no source.</summary>
public sealed class CalculationSearchTests
{
    [Theory]
    [InlineData("battery life", "runtime")]
    [InlineData("How long does it run?", "runtime")]
    [InlineData("runtime", "runtime")]
    [InlineData("divider voltage", "divider_voltage")]
    [InlineData("charging time", "charge_time")]
    [InlineData("pull-up", "i2c_pullup_least")]
    [InlineData("thinnest overlay", "overlay_least")]
    [InlineData("baud error", "uart_rate_error")]
    [InlineData("age of a capacitor", "capacitor_ageing")]
    public void The_words_of_a_question_find_what_answers_it(string typed, string first)
    {
        var (found, all) = CalculationSearch.Of(typed);
        Assert.Equal(first, found[0].Name);
        Assert.True(all);
    }

    [Fact]
    public void Nothing_typed_lists_every_calculation_and_nonsense_none()
    {
        Assert.Equal(Calculations.All.Count, CalculationSearch.Of(" ").Found.Count);
        Assert.Empty(CalculationSearch.Of("zebra").Found);
        Assert.Equal("No calculation for \"zebra\" yet. Try another word, such as runtime, charge, bend, divider or antenna.", ReckonSentences.Found("zebra", 0, 0, false));
    }

    [Fact]
    public void Where_none_holds_every_word_those_that_hold_some_are_shown_and_it_is_said()
    {
        var (found, all) = CalculationSearch.Of("led resistor");
        Assert.NotEmpty(found);
        Assert.False(all);
        Assert.Equal("No calculation holds every word; these hold some. 12 of 20. Enter takes the first.", ReckonSentences.Found("led resistor", 12, 20, all));
    }
}
