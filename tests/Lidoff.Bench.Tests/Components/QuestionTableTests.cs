using Bunit;
using Lidoff.Bench.Components.Layout;
using Lidoff.Bench.Components.Parts;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Components;

public sealed class QuestionTableTests : RoomContext
{
    [Fact]
    public void A_tie_that_means_nothing_is_refused_beside_its_field_and_a_short_name_is_enough()
    {
        Bench.Set("d", "D", """{"kind":"spot","spot":"U1"}""", """{"kind":"question","question":"Q1","text":"Who is U1?"}""");
        var table = Render<QuestionTable>(p => p.Add(d => d.Name, "d"));
        table.WaitForElement("input[aria-label='Tie Q1 to']", TimeSpan.FromSeconds(20)).Input("the radio");
        table.Find("form").Submit();
        table.WaitForAssertion(() => Assert.Contains("\"the radio\" names nothing in this dossier", table.Find(".fault").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        table.Find("input[aria-label='Tie Q1 to']").Input("u1");
        table.Find("form").Submit();
        table.WaitForAssertion(() => Assert.Equal(["part:U1"], Bench.View("d", BoardView.Of)!.Questions[0].Asked.Ties), TimeSpan.FromSeconds(20));
        table.WaitForAssertion(() => Assert.Empty(table.FindAll(".fault")), TimeSpan.FromSeconds(20));
    }
}
