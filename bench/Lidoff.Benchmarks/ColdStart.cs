using System.Globalization;

namespace Lidoff.Benchmarks;

/// <summary>CLI cold start against a hello-world apphost, at most 1.5 times, the two in turn.</summary>
public sealed class ColdStart : IBenchmark
{
    /// <inheritdoc/>
    public string Name => "cold-start";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        const int runs = 21;
        var (ours, theirs, commands) = (new List<double>(), new List<double>(), new List<double>());
        for (var i = 0; i <= runs; i++)
        {
            var (hello, _) = Timed.Run(place.Hello, []);
            var (start, _) = Timed.Run(place.Program, ["--version"]);
            var (command, _) = Timed.Run(place.Program, ["reckon", "capacity_from_energy", "energy=0.45", "voltage=3.7", "--json"]);
            if (i == 0) continue; // the first pair warms the file cache
            theirs.Add(hello);
            ours.Add(start);
            commands.Add(command);
        }

        var (a, b, c) = (Middle(ours), Middle(theirs), Middle(commands));
        return
        [
            new Row("lidoff --version", $"{Ms(a)} ms", $"hello-world apphost {Ms(b)} ms", (a / b).ToString("0.00", CultureInfo.InvariantCulture), "<= 1.5", a / b <= 1.5),
            new Row("lidoff reckon, a whole command with 100,000 draws", $"{Ms(c)} ms", "the same", (c / b).ToString("0.00", CultureInfo.InvariantCulture), "none, for information", true),
        ];
    }

    private static double Middle(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static string Ms(double seconds) => (seconds * 1000).ToString("0", CultureInfo.InvariantCulture);
}
