using System.Globalization;
using Lidoff.Catalogue.Parts;
using Lidoff.Naming.Asking;
using Lidoff.Naming.Knowing;
using Lidoff.Numbers;

namespace Lidoff.Naming.Ranking;

/// <summary>
/// Which measurement would tell most: for the likeliest candidates, how much the uncertainty about the identity would shrink on
/// average, by going through every outcome the catalogue foresees. Minutes are judgements from the trade.
/// </summary>
internal static class NextMeasures
{
    /// <summary>How many candidates are told apart; what is behind them is one lump.</summary>
    private const int Considered = 40;

    /// <summary>How often a measurement comes out wrong.</summary>
    private const double Error = 0.05;

    private static readonly Measure[] All =
    [
        new("read the mark again under other light", 3, "none", e => e.Mark is null || e.Mark.IsBlank || e.Mark.Lines.Any(l => l.Any(p => p.Rest > 0.2 || p.Alternatives.Count != 1)), p => [p.Name]),
        new("measure the body", 2, "none", e => e is { BodyMm: null, LongMm: null, ShortMm: null }, Sizes),
        new("measure the short side of the body", 1, "none", e => e is { BodyMm: null, LongMm: not null }, Sizes),
        new("measure the long side of the body", 1, "none", e => e is { BodyMm: null, ShortMm: not null }, Sizes),
        new("count the pins", 1, "none", e => e.Pins is null, p => p.Packages.Select(k => k.Pins).OfType<int>().Select(n => n.ToString(CultureInfo.InvariantCulture))),
        new("measure the pin pitch", 2, "none", e => e.PitchMm is null, p => p.Packages.Select(k => k.PitchMm).OfType<double>().Select(x => Math.Round(x, 2).ToString(CultureInfo.InvariantCulture))),
        new("say which package it is", 1, "none", e => e.Package is null, p => p.Packages.Select(k => k.Family).Where(f => f.Length > 0)),
        new("find its address on the bus", 8, "may damage", e => e.Bus?.Address is null, p => p.BusAddresses.Select(a => a.ToString(CultureInfo.InvariantCulture))),
        new("read its identity register", 10, "may damage", e => e.Identity is null, p => p.Identity.Select(i => string.Create(CultureInfo.InvariantCulture, $"{i.Register}:{i.Value}"))),
    ];

    internal static IReadOnlyList<NextMeasure> For(NameEvidence evidence, NamingCatalogue catalogue, double[] posterior, int[] order, double none)
    {
        var parts = order.Take(Considered).Where(i => posterior[i] > 1e-6).ToArray();
        var rest = Math.Max(0, 1 - none - parts.Sum(i => posterior[i]));
        return [.. All.Where(m => m.Open(evidence))
            .Select(m => new NextMeasure(m.Name, Math.Round(Bits(m, catalogue, posterior, parts, none + rest), 2), m.Minutes, m.Risk))
            .Where(m => m.Bits >= 0.05)
            .OrderByDescending(m => m.Bits / m.Minutes).ThenBy(m => m.Measure, StringComparer.Ordinal).Take(3)];
    }

    /// <summary>Mutual information of outcome and identity; what a candidate would show is unknown for some, who then show the mean.</summary>
    private static double Bits(Measure measure, NamingCatalogue catalogue, double[] posterior, int[] parts, double lump)
    {
        var foreseen = parts.Select(i => measure.Outcomes(catalogue.Parts[i]).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray()).ToArray();
        var outcomes = foreseen.SelectMany(f => f).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        if (outcomes.Length < 2) return 0;
        var place = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var outcome in outcomes) place[outcome] = place.Count;
        var mean = new double[outcomes.Length];
        for (var k = 0; k < parts.Length; k++)
        {
            foreach (var outcome in foreseen[k]) mean[place[outcome]] += posterior[parts[k]] / foreseen[k].Length;
        }
        var known = mean.Sum();
        if (known <= 0) return 0;
        for (var o = 0; o < mean.Length; o++) mean[o] = (0.5 * mean[o] / known) + (0.5 / mean.Length);

        // Outcomes that no candidate foresees would say "none"; they are left out, which makes the figure a little low.
        var marginal = new double[outcomes.Length];
        var bits = 0.0;
        for (var k = 0; k < parts.Length; k++)
        {
            var shown = Shown(foreseen[k], place, mean);
            for (var o = 0; o < mean.Length; o++) marginal[o] += posterior[parts[k]] * shown[o];
            bits += posterior[parts[k]] * NegativeEntropy(shown);
        }
        for (var o = 0; o < mean.Length; o++) marginal[o] += lump * mean[o];
        bits += lump * NegativeEntropy(mean);
        return Math.Max(0, bits - NegativeEntropy(marginal));
    }

    private static double[] Shown(string[] foreseen, Dictionary<string, int> place, double[] mean)
    {
        if (foreseen.Length == 0) return mean;
        var shown = new double[mean.Length];
        foreach (var outcome in foreseen) shown[place[outcome]] = (1 - Error) / foreseen.Length;
        for (var o = 0; o < shown.Length; o++) shown[o] += Error * mean[o];
        return shown;
    }

    private static double NegativeEntropy(double[] p)
    {
        var sum = 0.0;
        foreach (var x in p) sum += x > 0 ? x * Elementary.Log(x) : 0;
        return sum * 1.4426950408889634;
    }

    private static IEnumerable<string> Sizes(Part part) => part.Packages.Where(k => k is { LengthMm: not null, WidthMm: not null }).Select(k => Size(k.LengthMm!.Value, k.WidthMm!.Value));

    private static string Size(double a, double b) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(Math.Max(a, b), 1)}x{Math.Round(Math.Min(a, b), 1)}");

    private sealed record Measure(string Name, double Minutes, string Risk, Func<NameEvidence, bool> Open, Func<Part, IEnumerable<string>> Outcomes);
}
