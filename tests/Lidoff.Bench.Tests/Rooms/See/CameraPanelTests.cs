using Bunit;
using Lidoff.Bench.Rooms.See;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class CameraPanelTests : RoomContext
{
    [Fact]
    public async Task A_frame_keeps_the_tags_that_stood_there_when_it_was_taken()
    {
        Bench.Set("d", "");
        var panel = Render<CameraPanel>(parameters => parameters.Add(each => each.Name, "d"));
        var view = panel.FindComponent<CameraView>().Instance;
        On(panel, "[data-draft=camera-zoom]", e => e.Input("2x"));
        On(panel, "[data-draft=camera-light]", e => e.Input("ring"));
        await panel.InvokeAsync(view.Taking);
        // The zoom ring is turned while the frame is still on its way to the store.
        On(panel, "[data-draft=camera-zoom]", e => e.Input("4x"));
        await panel.InvokeAsync(() => view.Taken(new('a', 64), "camera-1.png", "Microscope camera"));
        Assert.Equal(new PictureSighting(new('a', 64), "", PictureSide.Unknown, "2x", "ring", "Microscope camera"), Assert.Single(Stored<PictureSighting>()));
    }
}
