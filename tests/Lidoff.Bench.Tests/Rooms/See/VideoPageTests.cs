using Bunit;
using Lidoff.Bench.Rooms.See;
using Lidoff.Bench.Rooms.See.Video;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class VideoPageTests : RoomContext
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(20);

    // The EBML header of a WebM (RFC 9559); the browser's decoder is tried in the browser's own tests.
    private static readonly byte[] Webm = Convert.FromHexString("1A45DFA39F4286810142F7810142F2810442F381084282847765626D4287810442858102");

    [Fact]
    public async Task Moments_and_stills_are_listed_in_time_and_remember_where_they_are_from()
    {
        var video = await Add("clip.webm", Webm);
        var picture = await Add("frame.png", GreyPng.Of(40, 30));
        Bench.Set("d", "", $$"""{"kind":"recording","recording":"V1","file":"{{video}}","voice":true,"zoom":"2x","camera":"cam"}""", """{"kind":"spot","spot":"U1"}""",
            """{"kind":"moment","recording":"V1","second":65.5,"spot":"U1","says":"<b>lamp</b>"}""", """{"kind":"moment","recording":"clip.webm","second":2}""", """{"kind":"moment","recording":"V9","second":1}""");
        var page = Render<VideoPage>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.Sha256, video));
        page.WaitForAssertion(() => Assert.Equal(["0:02.000", "1:05.500"], page.FindAll(".measured li > button:first-child").Select(each => each.TextContent)), Patience);
        Assert.Empty(page.FindAll(".measured b"));
        Assert.Contains("recording V1 with voice", page.Markup, StringComparison.Ordinal);
        Assert.Equal("/files/" + video, page.Find("video").GetAttribute("src"));

        var player = page.FindComponent<VideoPlayer>().Instance;
        Assert.Equal("V1", player.Base);
        await page.InvokeAsync(() => player.Still(picture, "frame.png", 2.00049));
        Assert.Equal(new StillSighting(picture, video, 2), Assert.Single(Stored<StillSighting>()));
        Assert.Equal(("2x", "", "cam"), Assert.Single(Stored<PictureSighting>().Select(each => (each.Zoom, each.Light, each.Camera))));
        page.WaitForAssertion(() => Assert.Equal("/dossiers/d/see/" + picture, page.Find(".stills a").GetAttribute("href")), Patience);
        On(page, "select[data-key=s]", e => e.Change("U1"));
        await page.InvokeAsync(() => player.Moment(3.25));
        Assert.Equal(new MomentSighting("V1", 3.25, "U1", ""), Stored<MomentSighting>()[^1]);

        // The picture's own page leads back to the very second.
        var still = Render<PicturePage>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.Sha256, picture));
        still.WaitForAssertion(() => Assert.Equal($"/dossiers/d/see/video/{video}?at=2", still.Find("a[href*='/see/video/']").GetAttribute("href")), Patience);
    }

    [Fact]
    public async Task A_video_from_elsewhere_keeps_its_name_and_a_picture_is_no_video()
    {
        var video = await Add("../<i>x</i>.webm", Webm);
        var picture = await Add("frame.png", GreyPng.Of(40, 30));
        var page = Render<VideoPage>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.Sha256, video));
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("video")), Patience);
        Assert.Empty(page.FindAll("i"));
        var player = page.FindComponent<VideoPlayer>().Instance;
        await page.InvokeAsync(() => player.Moment(1));
        Assert.Equal(new MomentSighting(video, 1, "", ""), Assert.Single(Stored<MomentSighting>()));
        var none = Render<VideoPage>(parameters => parameters.Add(each => each.Name, "d").Add(each => each.Sha256, picture));
        none.WaitForAssertion(() => Assert.Contains(SeeSentences.NoVideo, none.Markup, StringComparison.Ordinal), Patience);
    }

    [Fact]
    public async Task The_list_leads_to_the_video_and_folds_a_burst()
    {
        var video = await Add("clip.webm", Webm);
        string[] frames = [await Add("a.png", GreyPng.Of(40, 30)), await Add("b.png", GreyPng.Of(41, 30)), await Add("c.png", GreyPng.Of(42, 30))];
        Bench.Set("d", "", $$"""{"kind":"burst","burst":"B1","frames":["{{string.Join("\",\"", frames)}}"]}""");
        var page = Render<SeePage>(parameters => parameters.Add(each => each.Name, "d"));
        page.WaitForAssertion(() => Assert.Equal(["clip.webm", "a.png"], page.FindAll(".picture h2").Select(each => each.TextContent.Trim())), Patience);
        Assert.Equal("/dossiers/d/see/video/" + video, page.Find(".picture h2 a").GetAttribute("href"));
        On(page, "button[aria-expanded]", e => e.Click());
        page.WaitForAssertion(() => Assert.Equal(["clip.webm", "a.png", "b.png", "c.png"], page.FindAll(".picture h2").Select(each => each.TextContent.Trim())), Patience);
    }

    private async Task<string> Add(string name, byte[] bytes)
    {
        Bench.Set("d", "");
        using var body = new MemoryStream(bytes);
        return (await Bench.Add("d", name, body, "drop", CancellationToken.None)).Value.Sha256;
    }
}
