using Lidoff.Browser.Tests.Fixtures;
using Microsoft.Playwright;

namespace Lidoff.Browser.Tests.Walks;

/// <summary>The recorder's script against a browser whose microphone is granted late, refused, or whose encoder fails: nothing stays open.</summary>
public sealed class RecorderTests(TheBrowser browser) : BrowserTest(browser)
{
    // A page of the bench with a microphone of the test's own: `grant()` gives it, `open` says whether it still listens.
    private const string Microphone = """
        () => {
        window.posted = [];
        const asked = window.fetch;
        window.fetch = (address, how) => { posted.push(String(address)); return window.answer ? window.answer(String(address)) : asked(address, how); };
        window.track = { kind: 'audio', open: false, stop() { this.open = false; } };
        navigator.mediaDevices.getUserMedia = () => new Promise((resolve) => {
          window.grant = () => { track.open = true; resolve({ getTracks: () => [track], getAudioTracks: () => [track] }); };
        });
        }
        """;

    [Fact]
    public async Task A_microphone_granted_after_the_end_is_let_go_of_and_nothing_begins()
    {
        var page = await Page();
        await page.EvaluateAsync("() => { mine = new Recorder('/dossiers/band/recordings', () => {}, (text) => said.push(text)); begun = mine.start({ getVideoTracks: () => [] }, true, {}); mine.stop(); mine.stop(); }");
        Assert.Equal(["Nothing is recorded: it was ended before it began."], await page.EvaluateAsync<string[]>("() => said"));
        await page.EvaluateAsync("async () => { grant(); await begun; }");
        Assert.False(await page.EvaluateAsync<bool>("() => track.open"));
        Assert.Empty(await page.EvaluateAsync<string[]>("() => posted.filter((each) => each.includes('recordings'))"));
        Assert.Null(await page.EvaluateAsync<string?>("() => sessionStorage.getItem('recording')"));
    }

    [Fact]
    public async Task Ended_while_the_bench_is_asked_the_recording_it_began_is_ended_there_too()
    {
        var page = await Page();
        await page.EvaluateAsync("() => { answer = (address) => new Promise((done) => { told = () => done(new Response(JSON.stringify({ id: 'x', recording: 'V1' }))); if (address.endsWith('/end')) told(); }); mine = new Recorder('/dossiers/band/recordings', () => {}, (text) => said.push(text)); begun = mine.start({ getVideoTracks: () => [] }, true, {}); grant(); }");
        await Patience.Until("asked", () => page.EvaluateAsync<bool>("() => Boolean(window.told)"));
        await page.EvaluateAsync("async () => { mine.stop(); told(); await begun; }");
        Assert.False(await page.EvaluateAsync<bool>("() => track.open"));
        Assert.Contains("/recordings/x/end", await page.EvaluateAsync<string[]>("() => posted"));
        Assert.Null(await page.EvaluateAsync<string?>("() => sessionStorage.getItem('recording')"));
        Assert.Single(await page.EvaluateAsync<string[]>("() => said"));
    }

    [Fact]
    public async Task An_encoder_that_fails_leaves_no_microphone_open_and_no_recording_behind()
    {
        var page = await Page();
        var trouble = await page.EvaluateAsync<string>("""
            async () => {
              answer = async () => new Response(JSON.stringify({ id: 'x', recording: 'V1' }));
              window.MediaRecorder = class { static isTypeSupported() { return true; } constructor() { throw new Error('no encoder'); } };
              window.MediaStream = class {};
              const mine = new Recorder('/dossiers/band/recordings', () => {}, () => {});
              const begun = mine.start({ getVideoTracks: () => [] }, true, {}).then(() => '', (e) => e.message);
              grant();
              return begun;
            }
            """);
        Assert.Equal("no encoder", trouble);
        Assert.False(await page.EvaluateAsync<bool>("() => track.open"));
        Assert.Contains("/recordings/x/end", await page.EvaluateAsync<string[]>("() => posted"));
        Assert.Null(await page.EvaluateAsync<string?>("() => sessionStorage.getItem('recording')"));
    }

    private async Task<IPage> Page()
    {
        var bench = await Bench("band");
        var window = await Open(bench);
        await window.Go("/dossiers/band/see");
        await window.Page.EvaluateAsync(Microphone);
        await window.Page.EvaluateAsync("async () => { window.said = []; window.Recorder = (await import('/_content/Lidoff.Bench/recorder.js')).Recorder; window.mine = window.begun = window.answer = window.told = undefined; }");
        return window.Page;
    }
}
