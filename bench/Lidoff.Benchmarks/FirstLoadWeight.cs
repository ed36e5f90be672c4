using System.Globalization;
using Lidoff.BrowserSupport;

namespace Lidoff.Benchmarks;

/// <summary>What the first page of the demo weighs on the wire, at most 150 kB, beside the page of an empty workspace.</summary>
public sealed class FirstLoadWeight : IBenchmark
{
    /// <inheritdoc/>
    public string Name => "first-load";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("first-load");
        var demo = Weigh(place, "demo", Path.Combine(folder, "demo"));
        var empty = Weigh(place, "bench", Path.Combine(folder, "empty"));
        return
        [
            new Row(
                "first load of the demo, every byte to the browser",
                Kb(demo.Bytes),
                "an empty workspace " + Kb(empty.Bytes) + ", of it the framework's script " + Kb(empty.Parts[0].Bytes),
                ((double)demo.Bytes / empty.Bytes).ToString("0.00", CultureInfo.InvariantCulture),
                "<= 150 kB",
                demo.Bytes <= 150_000),
        ];
    }

    private static FirstLoad Weigh(BenchPlace place, string command, string workspace) => Weighing(place, command, workspace).GetAwaiter().GetResult();

    private static async Task<FirstLoad> Weighing(BenchPlace place, string command, string workspace)
    {
        await using var program = await BuiltProgram.Start(place.Program, command, "--no-browser", "--workspace", workspace);
        return await FirstLoad.Weigh(program.Address);
    }

    private static string Kb(long bytes) => (bytes / 1000.0).ToString("0.0", CultureInfo.InvariantCulture) + " kB";
}
