using Lidoff.Browser.Tests.Fixtures;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Pictures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>A microscope's camera in the page, made up by the browser: started, frozen, taken; and a machine without any.</summary>
public sealed class CameraWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_still_is_frozen_taken_and_tagged_with_zoom_and_light()
    {
        var bench = await Bench("band");
        var window = await Open(bench, camera: true);
        await window.Go("/dossiers/band/see");
        var panel = window.Page.Locator("section.camera");
        await panel.GetByLabel("Zoom").PressSequentiallyAsync("2x");
        await panel.GetByLabel("Light").PressSequentiallyAsync("ring, low");
        await window.Settled();
        await Start(panel);
        await Freeze(window, panel);
        await Take(panel);
        // Frozen means frozen: taken again, it is the same picture to the byte. The zoom is turned while that one is still on its way.
        await Slowly(window, panel, "4x");
        await bench.Stored("band", "two tagged frames", session => session.View.Live<PictureSighting>().Count == 2);
        await panel.GetByRole(AriaRole.Button, new() { Name = "Freeze" }).ClickAsync();
        await Moves(panel);
        await Take(panel);
        await bench.Stored("band", "three tagged frames", session => session.View.Live<PictureSighting>().Count == 3);

        var view = bench.Stored("band", session => session.View);
        var files = view.Live<FileAdded>().Select(file => file.Value).ToList();
        Assert.All(files, file => Assert.Equal(("image/png", "camera"), (file.Type, file.From)));
        // The same bytes are one file, however often they come; the frame after the thaw is another.
        Assert.Equal(2, files.Count);
        Assert.NotEqual(files[0].Sha256, files[1].Sha256);
        Assert.NotEqual(files[0].Name, files[1].Name);
        var tags = view.Live<PictureSighting>().Select(picture => picture.Value).ToList();
        Assert.Equal([("2x", "ring, low"), ("2x", "ring, low"), ("4x", "ring, low")], tags.Select(tag => (tag.Zoom, tag.Light)));
        Assert.Equal([files[0].Sha256, files[0].Sha256, files[1].Sha256], tags.Select(tag => tag.File));
        Assert.All(tags, tag => Assert.Contains("fake", tag.Camera, StringComparison.OrdinalIgnoreCase));

        // What was taken is what was seen: the camera's size, every pixel there, listed with its tags.
        var said = await panel.Locator("[data-camera=video]").EvaluateAsync<int[]>("video => [video.videoWidth, video.videoHeight]");
        var path = Path.Combine(bench.Folder, "files", files[1].Sha256[..2], files[1].Sha256[2..]);
        var header = PictureFile.Read(path, files[1].Name).Value;
        Assert.Equal((said[0], said[1]), (header.Width, header.Height));
        Assert.True(PictureFile.Check(path, files[1].Name).Ok);
        var card = window.Page.Locator("ul.pictures li", new() { HasText = files[1].Name });
        await Assertions.Expect(card).ToContainTextAsync("4x");
        await Assertions.Expect(card).ToContainTextAsync("ring, low");
        await Shoot(window, "taken");

        // The camera is let go of.
        await panel.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Assertions.Expect(panel.Locator("[data-camera=video]")).ToBeHiddenAsync();
        Assert.True(await panel.Locator("[data-camera=video]").EvaluateAsync<bool>("video => video.srcObject === null"));
    }

    [Fact]
    public async Task Without_a_camera_a_sentence_says_so_and_nothing_is_lost()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Context.GrantPermissionsAsync(["camera"]);
        await window.Go("/dossiers/band/see");
        var panel = window.Page.Locator("section.camera");
        await panel.GetByLabel("Zoom").PressSequentiallyAsync("2x");
        await window.Settled();
        await panel.GetByRole(AriaRole.Button, new() { Name = "Start the camera" }).ClickAsync();
        await Assertions.Expect(panel.GetByRole(AriaRole.Status)).ToHaveTextAsync("No camera was found on this machine; pictures come in by drop, choice or a watched folder all the same.");
        await Assertions.Expect(panel.GetByLabel("Zoom")).ToHaveValueAsync("2x");
        await Assertions.Expect(panel.GetByRole(AriaRole.Button, new() { Name = "Start the camera" })).ToBeVisibleAsync();
        await Assertions.Expect(panel.GetByRole(AriaRole.Button, new() { Name = "Take" })).ToBeHiddenAsync();
        await Shoot(window, "without");
        // And so they do.
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Picture());
        await window.Arrives("/dossiers/band/see/*");
        Assert.Equal("board.png", bench.Stored("band", session => session.View.Live<FileAdded>().Single().Value.Name));
    }

    private static async Task Start(ILocator panel)
    {
        await panel.GetByRole(AriaRole.Button, new() { Name = "Start the camera" }).ClickAsync();
        await Assertions.Expect(panel.Locator("[data-camera=video]")).ToBeVisibleAsync();
        await Moves(panel);
    }

    // The camera's picture runs on: its clock has moved.
    private static async Task Moves(ILocator panel)
    {
        var before = await panel.Locator("[data-camera=video]").EvaluateAsync<double>("video => video.currentTime");
        await Patience.Until("the camera's picture moves", () => panel.Locator("[data-camera=video]").EvaluateAsync<bool>("(video, before) => !video.paused && video.currentTime > before + 0.3", before));
    }

    private static async Task Freeze(Window window, ILocator panel)
    {
        await window.Page.Locator("h1").ClickAsync();
        await window.Page.Keyboard.PressAsync("z");
        await Assertions.Expect(panel.GetByRole(AriaRole.Button, new() { Name = "Freeze" })).ToHaveAttributeAsync("aria-pressed", "true");
    }

    private static async Task Take(ILocator panel)
    {
        await panel.GetByRole(AriaRole.Button, new() { Name = "Take" }).ClickAsync();
        await Assertions.Expect(panel.GetByRole(AriaRole.Status)).ToContainTextAsync(" taken.");
    }

    // Takes a frame and turns the zoom before it has arrived.
    private static async Task Slowly(Window window, ILocator panel, string zoom)
    {
        var (asked, go) = (new TaskCompletionSource(), new TaskCompletionSource());
        await window.Page.RouteAsync("**/files?*", async route =>
        {
            asked.TrySetResult();
            await go.Task;
            await route.ContinueAsync();
        });
        await panel.GetByRole(AriaRole.Button, new() { Name = "Take" }).ClickAsync();
        await asked.Task.WaitAsync(TimeSpan.FromMilliseconds(Patience.Ms));
        await panel.GetByLabel("Zoom").FillAsync(zoom);
        await window.Settled();
        go.SetResult();
        await window.Page.UnrouteAllAsync(new() { Behavior = UnrouteBehavior.Wait });
    }
}
