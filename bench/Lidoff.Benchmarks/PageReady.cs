using System.Diagnostics;
using System.Globalization;
using System.Net;
using Lidoff.BrowserSupport;

namespace Lidoff.Benchmarks;

/// <summary>
/// From the start of the process to the first whole page: <c>lidoff bench</c> at most 1 s, <c>lidoff demo</c> with its dossier laid out
/// anew at most 10 s, beside the start of a hello-world program.
/// </summary>
public sealed class PageReady : IBenchmark
{
    /// <inheritdoc/>
    public string Name => "page-ready";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var folder = place.Fresh("page-ready");
        var runs = 0;
        var hello = Timed.Median(9, () => Timed.Run(place.Hello, []).Seconds);
        var bench = Timed.Median(9, () => Seconds(place, "bench", Path.Combine(folder, "bench")));
        var demo = Timed.Median(3, () => Seconds(place, "demo", Path.Combine(folder, "demo" + runs++)));
        return
        [
            new Row("lidoff bench, start to first page", S(bench), "hello-world program " + S(hello), R(bench / hello), "<= 1 s", bench <= 1),
            new Row("lidoff demo, start to first page, laid out anew", S(demo), "lidoff bench " + S(bench), R(demo / bench), "<= 10 s", demo <= 10),
        ];
    }

    private static double Seconds(BenchPlace place, string command, string workspace) => Measure(place, command, workspace).GetAwaiter().GetResult();

    private static async Task<double> Measure(BenchPlace place, string command, string workspace)
    {
        using var client = new HttpClient(new SocketsHttpHandler { CookieContainer = new CookieContainer(), UseProxy = false });
        var watch = Stopwatch.StartNew();
        await using var program = await BuiltProgram.Start(place.Program, command, "--no-browser", "--workspace", workspace);
        // The key's address leads on to the first page; its whole body counts.
        using var page = await client.GetAsync(program.Address);
        var body = await page.Content.ReadAsStringAsync();
        var seconds = watch.Elapsed.TotalSeconds;
        if (page.StatusCode != HttpStatusCode.OK || !body.Contains("</html>", StringComparison.Ordinal)) throw new InvalidOperationException(command + " answered " + page.StatusCode);
        return seconds;
    }

    private static string S(double seconds) => seconds.ToString("0.00", CultureInfo.InvariantCulture) + " s";

    private static string R(double ratio) => ratio.ToString("0.0", CultureInfo.InvariantCulture);
}
