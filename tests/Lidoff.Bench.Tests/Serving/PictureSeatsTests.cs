using Lidoff.Bench.Data;

namespace Lidoff.Bench.Tests.Serving;

/// <summary>However many ask at once, two small pictures and one large are decoded at a time; a seat comes back from work that failed.</summary>
public sealed class PictureSeatsTests : IDisposable
{
    private readonly PictureSeats seats = new();

    public void Dispose() => seats.Dispose();

    [Theory]
    [InlineData(false, 2)]
    [InlineData(true, 1)]
    public async Task So_many_sit_and_no_more(bool large, int most)
    {
        var (now, greatest, gate) = (0, 0, new object());
        using var all = new CountdownEvent(most);
        await Task.WhenAll(Enumerable.Range(0, 12).Select(i => seats.Take(
            large,
            () =>
            {
                lock (gate) greatest = Math.Max(greatest, ++now);
                // The first ones wait for one another: as many as may sit must really sit together.
                if (!all.IsSet)
                {
                    all.Signal();
                    Assert.True(all.Wait(TimeSpan.FromSeconds(30)));
                }

                Thread.Sleep(5);
                lock (gate) now--;
                return i;
            },
            CancellationToken.None)));
        Assert.Equal(most, greatest);
    }

    [Fact]
    public async Task Work_that_fails_gives_its_seat_back_and_who_stops_waiting_never_sat()
    {
        for (var i = 0; i < 3; i++) await Assert.ThrowsAsync<IOException>(() => seats.Take<int>(true, () => throw new IOException("gone"), CancellationToken.None));
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => seats.Take(true, () => 1, stop.Token));
        Assert.Equal(7, await seats.Take(true, () => 7, CancellationToken.None));
    }
}
