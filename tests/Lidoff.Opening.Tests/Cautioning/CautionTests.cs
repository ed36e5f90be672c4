using Lidoff.Opening.Cautioning;
using Lidoff.Opening.Kinds;
using Lidoff.TestSupport;

namespace Lidoff.Opening.Tests.Cautioning;

public sealed class CautionTests
{
    [Fact]
    public void Every_act_has_a_caution_of_its_own() =>
        Assert.DoesNotContain(Enum.GetValues<StepAct>(), act => act != StepAct.Other && Cautions.For(act).Count == 0);

    [Fact]
    public void An_act_that_calls_for_none_gets_none() => Assert.Empty(Cautions.For(StepAct.Other));

    [Fact]
    public void Keys_are_told_apart_and_sentences_end()
    {
        Assert.Equal(Cautions.All.Count, Cautions.All.Select(caution => caution.Key).Distinct().Count());
        Assert.All(Cautions.All, caution => Assert.EndsWith(".", caution.Say, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(StepAct.Heat, "heat-and-cell")]
    [InlineData(StepAct.Cut, "blades")]
    [InlineData(StepAct.Grind, "dust")]
    [InlineData(StepAct.Charge, "charging")]
    [InlineData(StepAct.Memory, "protected-memory")]
    public void A_caution_stands_where_it_bites(StepAct act, string key) => Assert.Contains(Cautions.For(act), caution => caution.Key == key);

    [Fact]
    public void A_damaged_or_dead_cell_calls_for_more()
    {
        Assert.Equal(["cell-damaged"], Keys("""{"damaged":true}"""));
        Assert.Equal(["cell-reads-zero"], Keys("""{"volts":0.02}"""));
        Assert.Equal(["cell-damaged", "cell-reads-zero"], Keys("""{"volts":0,"damaged":true}"""));
        Assert.Empty(Keys("""{"volts":3.8,"damaged":false}"""));

        // A cell whose protection has opened reads near nothing at its leads; no charged cell of any chemistry in a wearable reads half a volt
        // (zinc and silver 1.0, lithium 2.0 V when empty): common practice, no source.
        Assert.Equal(["cell-reads-zero"], Keys("""{"volts":0.5}"""));
        Assert.Equal(["cell-reads-zero"], Keys("""{"volts":-0.5}"""));
        Assert.Empty(Keys("""{"volts":0.51}"""));

        static IEnumerable<string> Keys(string line) => Cautions.For(KindLines.Read(new CellKind(), line)).Select(caution => caution.Key);
    }
}
