using System.Diagnostics;
using System.Globalization;
using Lidoff.Catalogue;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Benchmarks;

/// <summary>Building the catalogue, opening it from its cache, and searching it with misread signs, beside a look at every part.</summary>
public sealed class CatalogueSearch : IBenchmark
{
    private const int Queries = 500;

    /// <inheritdoc/>
    public string Name => "catalogue";

    /// <inheritdoc/>
    public IReadOnlyList<Row> Run(BenchPlace place)
    {
        var cache = place.Fresh("catalogue");
        var (plain, join) = Clock(() => PartCatalogue.Load().Value);
        using var first = PartCatalogue.Open(ShippedTables.OwnFolder, cache, []).Value;
        var (_, build) = Clock(() => first.Search("nRF52832", 1));
        var open = Timed.Median(9, () =>
        {
            var (opened, seconds) = Clock(() => PartCatalogue.Open(ShippedTables.OwnFolder, cache, []).Value);
            opened.Dispose();
            return seconds;
        });
        var texts = Texts(plain).ToList();
        var (with, without) = (P95(first, texts), P95(plain, texts));
        return
        [
            new Row("catalogue opened from its cache", Ms(open), "tables read and joined " + Ms(join), Ratio(open, join), "<= 150 ms", open <= 0.150),
            new Row("search index built", Ms(build), "", "", "<= 60 s", build <= 60),
            new Row($"catalogue search p95, {Queries} texts, half of them misread", Ms(with), "every part looked at " + Ms(without), Ratio(with, without), "<= 20 ms", with <= 0.020),
        ];
    }

    // Parts at even steps through the list; in every second text one sign is replaced, so that no stricter way finds it.
    private static IEnumerable<string> Texts(PartCatalogue catalogue)
    {
        var step = catalogue.Parts.Count / Queries;
        for (var i = 0; i < Queries; i++)
        {
            var name = catalogue.Parts[i * step].Name;
            yield return i % 2 == 0 || name.Length < 6 ? name : string.Concat(name.AsSpan(0, name.Length / 2), "X", name.AsSpan((name.Length / 2) + 1));
        }
    }

    private static double P95(PartCatalogue catalogue, List<string> texts)
    {
        foreach (var text in texts) catalogue.Search(text, 10);
        return texts.Select(text => Clock(() => catalogue.Search(text, 10)).Seconds).Order().ElementAt(texts.Count * 95 / 100);
    }

    private static (T Result, double Seconds) Clock<T>(Func<T> work)
    {
        var watch = Stopwatch.StartNew();
        var result = work();
        return (result, watch.Elapsed.TotalSeconds);
    }

    private static string Ms(double seconds) => (seconds * 1000).ToString("0.0", CultureInfo.InvariantCulture) + " ms";

    private static string Ratio(double a, double b) => (a / b).ToString("0.000", CultureInfo.InvariantCulture);
}
