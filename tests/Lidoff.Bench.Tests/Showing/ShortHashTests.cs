using Lidoff.Bench.Rooms.See.Viewing;
using Lidoff.Bench.Showing;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Tests.Showing;

public sealed class ShortHashTests : IDisposable
{
    private readonly FakeBench bench = new();

    public void Dispose() => bench.Dispose();

    [Theory]
    [InlineData("436d0979320cf2f4", "436d0979")]
    [InlineData("436d0979", "436d0979")]
    [InlineData("old", "old")]
    [InlineData("", "")]
    [InlineData(null, "")]
    public void Only_what_is_too_long_is_cut(string? hash, string shown) => Assert.Equal(shown, ShortHash.Of(hash));

    [Fact]
    public async Task A_scale_carried_over_from_a_name_that_is_no_hash_is_shown_as_it_was_typed()
    {
        bench.Set("d", "");
        using var body = new MemoryStream(GreyPng.Of(60, 40));
        var picture = (await bench.Add("d", "a.png", body, "drop", Xunit.TestContext.Current.CancellationToken)).Value.Sha256;
        bench.Set("d", "", """{"kind":"scale","picture":"a.png","from":[5,5],"to":[45,5],"length_mm":4,"u_mm":0.05,"carried_from":"old"}""");
        Assert.EndsWith(", taken over from old", bench.View("d", dossier => PictureView.Of(dossier, picture))!.Scale, StringComparison.Ordinal);
    }
}
