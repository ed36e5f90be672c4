using System.Globalization;

namespace Lidoff.Benchmarks;

/// <summary>Figures of a set of crops, each with the middle 90 % of what whole crops drawn anew with replacement give (bootstrap).</summary>
internal static class MarkFigures
{
    // Enough for two decimals of a 90 % interval; drawn with one seed, so that a figure comes out alike every time.
    private const int Draws = 1000;
    private const int Seed = 1;

    /// <summary>Mean character error.</summary>
    public static double Error(IReadOnlyList<CropScore> crops) => crops.Average(crop => crop.Error);

    /// <summary>Share of lines right.</summary>
    public static double Lines(IReadOnlyList<CropScore> crops) => (double)crops.Sum(crop => crop.Right) / crops.Sum(crop => crop.Lines);

    /// <summary>Share of crops right from end to end.</summary>
    public static double Whole(IReadOnlyList<CropScore> crops) => Share(crops, crop => crop.Cost == 0);

    /// <summary>Share of crops of which something holds.</summary>
    public static double Share(IReadOnlyList<CropScore> crops, Func<CropScore, bool> holds) => (double)crops.Count(holds) / crops.Count;

    /// <summary>Median time.</summary>
    public static double Seconds(IReadOnlyList<CropScore> crops) => crops.Select(crop => crop.Seconds).Order().ElementAt(crops.Count / 2);

    /// <summary>Calibration error of characters.</summary>
    public static double Glyphs(IReadOnlyList<CropScore> crops) => MarkScore.Calibration([.. crops.SelectMany(crop => crop.Glyphs)]);

    /// <summary>Calibration error of lines.</summary>
    public static double WholeLines(IReadOnlyList<CropScore> crops) => MarkScore.Calibration([.. crops.SelectMany(crop => crop.Whole)]);

    /// <summary>One row: the figure with its interval, the packaged reader's beside it where it ran.</summary>
    public static Row Row(string what, IReadOnlyList<CropScore> crops, Func<IReadOnlyList<CropScore>, double> figure, double? target, bool atMost, IReadOnlyList<CropScore>? packaged = null)
    {
        var value = figure(crops);
        var drawn = Resampled(crops, figure);
        var shown = $"{Text(value)} ({Text(drawn[Draws / 20])} to {Text(drawn[Draws - 1 - (Draws / 20)])})";
        double? other = packaged is { Count: > 0 } ? figure(packaged) : null;
        return new(what, shown, other is { } told ? $"packaged reader {Text(told)}" : "none", other is > 0 ? Text(value / other.Value) : "",
            target is { } aim ? $"{(atMost ? "<=" : ">=")} {aim.ToString(CultureInfo.InvariantCulture)}" : "", target is null || (atMost ? value <= target : value >= target));
    }

    /// <summary>Three decimals.</summary>
    public static string Text(double value) => value.ToString("0.000", CultureInfo.InvariantCulture);

    private static double[] Resampled(IReadOnlyList<CropScore> crops, Func<IReadOnlyList<CropScore>, double> figure)
    {
        var random = new Random(Seed);
        var drawn = new CropScore[crops.Count];
        var values = new double[Draws];
        for (var k = 0; k < Draws; k++)
        {
            for (var i = 0; i < drawn.Length; i++) drawn[i] = crops[random.Next(crops.Count)];
            values[k] = figure(drawn);
        }

        Array.Sort(values);
        return values;
    }
}
