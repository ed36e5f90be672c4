using Lidoff.Weighing.Quarrels;
using Bench = Lidoff.Weighing.Tests.Modelling.Bench;

namespace Lidoff.Weighing.Tests.Quarrels;

public sealed class QuarrelTests
{
    [Fact]
    public void Two_callipers_that_cannot_both_be_right_quarrel_and_say_so()
    {
        using var bench = new Bench();
        var noted = bench.Note(
            """{"kind":"length","spot":"U1","what":"width","mm":3.00,"u_mm":0.015,"instrument":"calliper"}""",
            """{"kind":"length","spot":"U1","what":"width","mm":3.30,"u_mm":0.015,"instrument":"micrometer"}""",
            """{"kind":"length","spot":"U2","what":"width","mm":3.00,"u_mm":0.015}""",
            """{"kind":"length","spot":"U2","what":"width","mm":3.05,"u_mm":0.015}""");
        var quarrel = Assert.Single(QuarrelBook.Find(bench.View, bench.Model));
        Assert.Equal("width of U1 cannot be 3 ± 0.015 mm and 3.3 ± 0.015 mm.", quarrel.Say);
        Assert.Equal(new[] { noted[0].Id, noted[1].Id }.Order(), quarrel.Members);
        bench.Note($$"""{"kind":"undo","target":"{{noted[1].Id.Hex}}"}""");
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
    }

    [Fact]
    public void What_is_unlikely_but_possible_is_no_quarrel()
    {
        using var bench = new Bench();
        // Four standard uncertainties of the difference apart: once in sixteen thousand by chance, and still possible.
        bench.Note(
            """{"kind":"length","spot":"U1","what":"width","mm":3.00,"u_mm":0.01}""",
            """{"kind":"length","spot":"U1","what":"width","mm":3.056,"u_mm":0.01}""");
        Assert.Empty(QuarrelBook.Find(bench.View, bench.Model));
    }
}
