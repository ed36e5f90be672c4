using System.Globalization;
using System.Security.Cryptography;
using Lidoff.Bench.Hosting;
using Xunit;

namespace Lidoff.Bench.Tests.Looking;

/// <summary>
/// Serves the samples for a person with a browser: run this method alone with <c>-explicit only</c>; LIDOFF_LOOK is how many
/// benches (one login each) and for how many seconds, as "6x60". Addresses go to stderr. Spot U3 changes every two seconds.
/// </summary>
public sealed class LookingHost
{
    [Fact(Explicit = true)]
    public async Task Serve_samples_for_a_look()
    {
        var asked = (Environment.GetEnvironmentVariable("LIDOFF_LOOK") ?? "1x300").Split('x').Select(p => int.Parse(p, CultureInfo.InvariantCulture)).ToArray();
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(asked[1]));
        var (bench, tiles) = (new FakeBench(), new FakeTiles());
        var page = Samples.Brindle(bench, tiles);
        bench.Set(page);
        bench.Set(Samples.Hostile(bench));
        bench.Set(Samples.Empty("empty"));
        var running = Enumerable.Range(0, asked[0]).Select(_ => BenchHost.Run(
            new()
            {
                Data = bench,
                Tiles = tiles,
                Program = "Lidoff.Bench.Tests",
                Unguessable = RandomNumberGenerator.Fill,
                Start = Environment.GetEnvironmentVariable("LIDOFF_LOOK_AT") ?? "/dossiers/brindle",
                Log = Console.Error.WriteLine,
            },
            address => Console.Error.WriteLine(BenchHost.ReadyLine(address)),
            stop.Token)).ToList();
        var count = page.Entries;
        while (!stop.IsCancellationRequested)
        {
            await Task.Delay(2000);
            bench.Set(page with { Entries = ++count });
        }
        Assert.All(await Task.WhenAll(running), outcome => Assert.True(outcome.Ok));
    }
}
