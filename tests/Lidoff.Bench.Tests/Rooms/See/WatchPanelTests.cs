using Bunit;
using Lidoff.Bench.Rooms.See;
using Lidoff.Bench.Tests.Looking;
using Lidoff.TestSupport;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class WatchPanelTests : RoomContext
{
    [Fact]
    public void A_watch_that_began_stands_there_before_anything_lands_in_the_folder()
    {
        using var card = new TempFolder();
        Bench.Set("d", "");
        var panel = Render<WatchPanel>(parameters => parameters.Add(each => each.Name, "d"));
        On(panel, "#watch", e => e.Input(card.Path));
        On(panel, "form.entry", e => e.Submit());
        panel.WaitForAssertion(() => Assert.Equal("Watching: 0 files taken in.", panel.Find("[role=status]").TextContent), TimeSpan.FromSeconds(20));
        Assert.Contains(card.Path, panel.Find("code").TextContent, StringComparison.Ordinal);
        Assert.Empty(panel.FindAll("#watch"));
    }
}
