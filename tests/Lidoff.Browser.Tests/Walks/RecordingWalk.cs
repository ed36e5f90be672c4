using System.Globalization;
using Lidoff.Browser.Tests.Fixtures;
using Lidoff.BrowserSupport;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Pictures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>
/// A burst, a recording with voice, its moments and stills, all by keyboard; a recording whose connection drops, and one whose workbench
/// is killed. The camera and the microphone are made up by the browser; the decoder is its own.
/// </summary>
public sealed class RecordingWalk(TheBrowser browser) : BrowserTest(browser)
{
    [Fact]
    public async Task A_burst_and_a_recording_with_voice_by_keyboard_alone()
    {
        var bench = await Bench("band");
        await LiveBench.Command(bench.Folder, """{"kind":"spot","spot":"U1","role":"radio"}""", "note", "band", "-");
        var window = await Open(bench, camera: true);
        await window.Go("/dossiers/band/see");
        var (page, keys) = (window.Page, window.Page.Keyboard);
        // No page asks for a microphone by itself.
        await page.EvaluateAsync("() => { window.asked = []; const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices); navigator.mediaDevices.getUserMedia = (want) => { window.asked.push(Boolean(want.audio)); return ask(want); }; }");
        await page.FillAsync("[data-tag=zoom]", "2x");
        await page.FillAsync("[data-tag=light]", "ring");
        await window.Settled();
        await Camera(page);
        await Moves(page);
        Assert.Contains("1920x1080", await page.EvaluateAsync<string[]>("() => [...document.querySelector('[data-camera=size]').options].map((each) => each.value)"));

        await Key(page, "n");
        await keys.TypeAsync("3");
        await Key(page, "b");
        await bench.Stored("band", "a burst", session => session.View.Live<BurstSighting>().Count == 1);
        var view = bench.Stored("band", session => session.View);
        var burst = view.Live<BurstSighting>().Single().Value;
        Assert.Equal(("B1", 3, "2x", "ring"), (burst.Burst, burst.Frames.Count, burst.Zoom, burst.Light));
        // Taken one after the other: three different pictures, each with the burst's tags.
        Assert.Equal(burst.Frames, view.Live<FileAdded>().Select(each => each.Value.Sha256));
        Assert.Equal(burst.Frames.Select(frame => (frame, "2x", "ring")), view.Live<PictureSighting>().Select(each => (each.Value.File, each.Value.Zoom, each.Value.Light)));
        await Assertions.Expect(page.Locator("ul.pictures li")).ToHaveCountAsync(1);

        await page.Locator("select[data-key=s]").SelectOptionAsync("U1");
        await window.Settled();
        Assert.Equal("false", await page.EvaluateAsync<string>("() => window.asked.join()"));
        await Key(page, "r");
        await Kept(page, 0.05);
        Assert.Equal("false,true", await page.EvaluateAsync<string>("() => window.asked.join()"));
        await Key(page, "k");
        await bench.Stored("band", "a moment", session => session.View.Live<MomentSighting>().Count == 1);
        await Assertions.Expect(page.Locator("[data-camera=running]")).ToContainTextAsync("Recording V1 with voice");
        await Bears(window, "recording");
        await Key(page, "r");
        await bench.Stored("band", "a recording", session => session.View.Live<RecordingSighting>().Count == 1);
        var recording = bench.Stored("band", session => session.View.Live<RecordingSighting>().Single().Value);
        Assert.Equal(("V1", true, false, "2x", "ring"), (recording.Recording, recording.Voice, recording.BrokeOff, recording.Zoom, recording.Light));

        // Seen again: as long as it ran, with sound, the moment within it.
        await page.Locator("[data-camera=running] a").ClickAsync();
        await window.Arrives("/dossiers/band/see/video/" + recording.File);
        await page.WaitForSelectorAsync("[data-ready]");
        var length = await page.EvaluateAsync<double>("() => document.querySelector('video').duration");
        var moment = bench.Stored("band", session => session.View.Live<MomentSighting>().Single().Value);
        Assert.Equal(("V1", "U1"), (moment.Recording, moment.Spot));
        Assert.InRange(moment.Second, 0.5, length);
        // A key on, a key back: each another frame on that side. (On a busy machine the recording has gaps, and the decoder skips over some.)
        var first = await At(page);
        var second = await Step(page, "]", at => at > first);
        var third = await Step(page, "]", at => at > second);
        await Step(page, "[", at => at < third);
        await Step(page, "h", at => at > first);
        await Key(page, "t");
        await bench.Stored("band", "a still", session => session.View.Live<StillSighting>().Count == 1);
        var now = await At(page);
        view = bench.Stored("band", session => session.View);
        var still = view.Live<StillSighting>().Single().Value;
        Assert.Equal((recording.File, now), (still.Video, still.Second));
        var file = view.Live<FileAdded>().Single(each => each.Value.Sha256 == still.File).Value;
        Assert.Equal((string.Create(CultureInfo.InvariantCulture, $"V1-{now:0.000}s.png"), "image/png", "recording"), (file.Name, file.Type, file.From));
        var header = PictureFile.Read(Path.Combine(bench.Folder, "files", still.File[..2], still.File[2..]), file.Name).Value;
        Assert.Equal(await page.EvaluateAsync<string>("() => { const v = document.querySelector('video'); return `${v.videoWidth} ${v.videoHeight}`; }"), string.Create(CultureInfo.InvariantCulture, $"{header.Width} {header.Height}"));
        Assert.Equal(("2x", "ring"), view.Live<PictureSighting>().Where(each => each.Value.File == still.File).Select(each => (each.Value.Zoom, each.Value.Light)).Single());
        await window.Go("/dossiers/band/see/video/" + recording.File);
        await page.WaitForSelectorAsync("[data-ready]");
        await Bears(window, "video");

        // From the picture back to the very frame.
        await page.Locator(".stills a").ClickAsync();
        await window.Arrives("/dossiers/band/see/" + still.File);
        await page.Locator("main a[href*='/see/video/']").ClickAsync();
        await page.WaitForSelectorAsync("[data-ready]");
        await Patience.Until("the frame of the still", async () => await At(page) == still.Second);
    }

    [Fact]
    public async Task A_connection_that_drops_loses_nothing_of_a_recording()
    {
        var bench = await Bench("band");
        var window = await Open(bench, camera: true);
        window.Watch.Forgive("ERR_FAILED");
        await window.Go("/dossiers/band/see");
        var page = window.Page;
        await Camera(page);
        await Moves(page);
        await Key(page, "v");
        await Kept(page, 0.02);
        await page.RouteAsync("**/recordings/**", route => route.AbortAsync());
        await Assertions.Expect(page.Locator("[data-camera=running]")).ToContainTextAsync("the workbench does not answer");
        await page.WaitForTimeoutAsync(3000);
        await page.UnrouteAllAsync();
        await Assertions.Expect(page.Locator("[data-camera=running]")).Not.ToContainTextAsync("does not answer");
        var ran = await page.EvaluateAsync<string>("() => document.querySelector('[data-camera=running]').textContent");
        await Key(page, "v");
        await bench.Stored("band", "a recording", session => session.View.Live<RecordingSighting>().Count == 1);
        var recording = bench.Stored("band", session => session.View.Live<RecordingSighting>().Single().Value);
        Assert.False(recording.Voice || recording.BrokeOff);
        await window.Go("/dossiers/band/see/video/" + recording.File);
        await page.WaitForSelectorAsync("[data-ready]");
        // "Recording V1 without voice · 0:07 · …": all of its seconds are there.
        var clock = ran.Split(" · ")[1].Split(':');
        Assert.InRange(await page.EvaluateAsync<double>("() => document.querySelector('video').duration"), double.Parse(clock[1], CultureInfo.InvariantCulture) - 1, 120);
    }

    [Fact]
    public async Task What_a_killed_workbench_was_recording_is_there_at_its_next_start()
    {
        var folder = Folder["workspace"];
        await LiveBench.Command(folder, "", "new", "band");
        await using var program = await BuiltProgram.Start(Path.Combine(AppContext.BaseDirectory, "lidoff"), "bench", "--no-browser", "--port", "0", "--workspace", folder);
        var window = await Open(LiveBench.Elsewhere(program.Address, folder), camera: true);
        foreach (var part in new[] { "ERR_CONNECTION", "WebSocket", "Connection disconnected", "Failed to", "ERR_EMPTY_RESPONSE" }) window.Watch.Forgive(part);
        await window.Go("/dossiers/band/see");
        await Camera(window.Page);
        await Moves(window.Page);
        await Key(window.Page, "r");
        await Kept(window.Page, 0.05);
        using (var victim = System.Diagnostics.Process.GetProcessById(program.Id)) victim.Kill();
        var again = await Bench(folder, 0);
        await again.Stored("band", "the recording", session => session.View.Live<RecordingSighting>().Count == 1);
        var recording = again.Stored("band", session => session.View.Live<RecordingSighting>().Single().Value);
        Assert.Equal(("V1", true, true), (recording.Recording, recording.Voice, recording.BrokeOff));
        Assert.Empty(Directory.GetFiles(Path.Combine(folder, "recordings")));
        // And it plays.
        var other = await Open(again);
        await other.Go("/dossiers/band/see/video/" + recording.File);
        await other.Page.WaitForSelectorAsync("[data-ready]");
        Assert.InRange(await other.Page.EvaluateAsync<double>("() => document.querySelector('video').duration"), 0.3, 120);
    }

    [Fact]
    public async Task A_file_that_only_looks_like_a_video_is_kept_and_said()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        // The header of a WebM (RFC 9559) and then words.
        await window.Page.SetInputFilesAsync("form[data-upload] input[type=file]", Files.Of("clip<b>.webm", [.. Convert.FromHexString("1A45DFA39F4286810142F7810142F2810442F381084282847765626D4287810442858102"), .. "no video at all"u8]));
        await window.Arrives("/dossiers/band/see/video/*");
        await Assertions.Expect(window.Page.Locator("[data-video=said]")).ToHaveTextAsync("The browser cannot decode this video; its file is kept as it is. Save it once more as WebM or MP4 (H.264).");
        Assert.Equal("video/webm", bench.Stored("band", session => session.View.Live<FileAdded>().Single().Value.Type));
        await Bears(window, "no video");
    }

    private static async Task Key(IPage page, string key)
    {
        // A key is a letter while a field has it.
        await page.EvaluateAsync("() => document.activeElement?.blur()");
        await page.Keyboard.PressAsync(key);
    }

    private static async Task Camera(IPage page)
    {
        // A small picture: what it costs to record one as large as the made-up camera's largest is no matter of ours.
        await page.EvaluateAsync("() => localStorage.setItem('camera', JSON.stringify({ size: '640x480' }))");
        await Assertions.Expect(page.Locator("[data-camera=start]")).ToBeEnabledAsync();
        await Key(page, "c");
    }

    private static async Task Moves(IPage page)
    {
        await Assertions.Expect(page.Locator("[data-camera=video]")).ToBeVisibleAsync();
        await Patience.Until("the camera's picture moves", () => page.EvaluateAsync<bool>("() => document.querySelector('[data-camera=video]').currentTime > 0.3"));
    }

    // "· 0.3 MB kept": so much is on the disk.
    private static Task Kept(IPage page, double mb) => Patience.Until("kept on the disk", () => page.EvaluateAsync<bool>("(mb) => Number(/([\\d.]+) MB kept/.exec(document.querySelector('[data-camera=running]').textContent)?.[1] ?? 0) >= mb", mb));

    private static async Task<double> At(IPage page) => double.Parse((await page.GetAttributeAsync(".video", "data-at"))!, CultureInfo.InvariantCulture);

    private static async Task<double> Step(IPage page, string key, Func<double, bool> there)
    {
        await Key(page, key);
        await Patience.Until("a frame after " + key, async () => there(await At(page)));
        return await At(page);
    }
}
