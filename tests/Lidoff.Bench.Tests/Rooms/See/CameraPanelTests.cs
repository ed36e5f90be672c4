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

    [Fact]
    public async Task A_burst_is_one_act_and_each_of_its_frames_is_tagged()
    {
        Bench.Set("d", "", """{"kind":"burst","burst":"B1","frames":["aa","bb"]}""");
        var panel = Panel();
        var view = panel.FindComponent<CameraView>().Instance;
        On(panel, "[data-draft=camera-zoom]", e => e.Input("2x"));
        await panel.InvokeAsync(view.Taking);
        string[] frames = [new('a', 64), new('b', 64), new('c', 64)];
        await panel.InvokeAsync(() => view.Burst(frames, "Microscope camera"));
        Assert.Equal(new BurstSighting("B2", [.. frames], "2x", "", "Microscope camera"), Stored<BurstSighting>()[1]);
        Assert.Equal(frames.Select(frame => (frame, "2x", "Microscope camera")), Stored<PictureSighting>().Select(each => (each.File, each.Zoom, each.Camera)));
        await Hand.Undo("d");
        Assert.Single(Stored<BurstSighting>());
        Assert.Empty(Stored<PictureSighting>());
    }

    [Fact]
    public void Tags_used_last_are_a_key_away_whatever_they_say()
    {
        Bench.Set("d", "", """{"kind":"picture","file":"aa","zoom":"2x","light":"ring"}""", """{"kind":"picture","file":"bb","zoom":"4x"}""", """{"kind":"picture","file":"cc","zoom":"2x","light":"<img src=x onerror=alert(1)> \u202Egnir"}""");
        var panel = Panel();
        // The newest first, each once, on the keys beside one another.
        Assert.Equal(["2x 7", "4x 8"], panel.FindAll(".tag").Take(2).Select(tag => tag.TextContent.Trim()));
        Assert.Equal(["7", "8", "u", "i"], panel.FindAll(".tag").Select(tag => tag.GetAttribute("data-key")));
        Assert.Empty(panel.FindAll("img"));
        On(panel, "[data-key='8']", e => e.Click());
        Assert.Equal("4x", panel.Find("[data-draft=camera-zoom]").GetAttribute("value"));
    }

    [Fact]
    public async Task A_moment_belongs_to_the_spot_that_is_selected()
    {
        Bench.Set("d", "", """{"kind":"spot","spot":"U1","role":"radio"}""");
        var panel = Panel();
        var view = panel.FindComponent<CameraView>().Instance;
        await panel.InvokeAsync(() => view.Moment("V1", 1.23456));
        On(panel, "select[data-key=s]", e => e.Change("U1"));
        await panel.InvokeAsync(() => view.Moment("V1", 2));
        Assert.Equal([new MomentSighting("V1", 1.235, "", ""), new MomentSighting("V1", 2, "U1", "")], Stored<MomentSighting>());
    }

    private IRenderedComponent<CameraPanel> Panel() =>
        Render<CameraPanel>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.View, Bench.View("d", SeeView.Of)!));
}
