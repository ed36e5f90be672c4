using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Tests.Looking;

namespace Lidoff.Bench.Tests.Rooms.See;

public sealed class BoardLookTests : IDisposable
{
    private readonly FakeBench bench = new();

    public void Dispose() => bench.Dispose();

    // Three names that stand for quite other places in the second picture: neither picture is alone, and both are told so.
    [Fact]
    public async Task Landmarks_of_the_same_names_that_do_not_go_together_are_said_on_both_pictures()
    {
        bench.Set("d", "");
        var front = (await bench.Add("d", "front.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", CancellationToken.None)).Value.Sha256;
        var back = (await bench.Add("d", "back.png", new MemoryStream(GreyPng.Of(200, 101)), "drop", CancellationToken.None)).Value.Sha256;
        bench.Set("d", "",
            [
                .. Marks(front, (20, 20), (180, 22), (100, 90)),
                .. Marks(back, (20, 20), (30, 80), (190, 15)),
            ]);
        string[] says = [Says(front), Says(back)];
        Assert.DoesNotContain(says, each => each.Contains("No other picture", StringComparison.Ordinal));
        Assert.Contains(says, each => each.Contains("landmarks by the same names, but the places do not go together", StringComparison.Ordinal));
        Assert.Contains(says, each => each.Contains("do not fit this board", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_picture_whose_landmarks_no_other_shows_is_told_that()
    {
        bench.Set("d", "");
        var front = (await bench.Add("d", "front.png", new MemoryStream(GreyPng.Of(200, 100)), "drop", CancellationToken.None)).Value.Sha256;
        bench.Set("d", "", Marks(front, (20, 20), (180, 22), (100, 90)));
        Assert.StartsWith("No other picture shows two of these landmarks yet.", Says(front), StringComparison.Ordinal);
    }

    private static string[] Marks(string sha256, params (int X, int Y)[] at) =>
        [.. at.Select((place, i) => $$"""{"kind":"landmark","landmark":"H{{i}}","picture":"{{sha256}}","point":[{{place.X}},{{place.Y}}]}""")];

    private string Says(string sha256) => bench.View("d", dossier => PictureView.Of(dossier, sha256))!.Board.Says;
}
