using Lidoff.Evidence.Grading;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Spreads;

namespace Lidoff.Weighing.Modelling;

/// <summary>
/// Several lines of evidence about one length as one value, mm. Readings of one picture share its scale, so more clicks in it do
/// not make that part smaller, nor do those of one board where one of them has its scale from it; different pictures and instruments are independent lines. Where they disagree beyond their
/// doubts, the doubt is widened by how much (Birge's ratio) and it is said.
/// </summary>
public sealed record CombinedLength(double Mm, double UMm, double LowMm, double HighMm, Grade Grade, double Widened)
{
    // The normal's 5 % and 95 % points.
    private const double Ninety = 1.6448536269514722;

    /// <summary>Combines; at least one reading.</summary>
    public static CombinedLength Of(IReadOnlyList<LengthReading> readings)
    {
        Guard.That(readings.Count > 0, "at least one reading");
        // One reading alone keeps its own interval, which need not be symmetric.
        if (readings.Count == 1) return new(readings[0].Mm, readings[0].UMm, readings[0].Low, readings[0].High, Grade.E2, 1);
        var lines = readings.GroupBy(LineOf(readings)).OrderBy(line => line.Key, StringComparer.Ordinal).Select(OneLine).ToList();
        var mean = WeightedMean.Of(lines);
        var widened = Math.Max(1, mean.Birge);
        var u = mean.U * widened;
        return new(mean.Value, u, mean.Value - (Ninety * u), mean.Value + (Ninety * u), Grades.OfLines([.. lines.Select(_ => Grade.E2)]), widened);
    }

    /// <summary>Which line each of these readings belongs to.</summary>
    internal static Func<LengthReading, string> LineOf(IEnumerable<LengthReading> readings)
    {
        var shared = readings.Where(reading => reading.ByBoard).Select(reading => reading.Board).ToHashSet(StringComparer.Ordinal);
        return reading => shared.Contains(reading.Board) ? "board " + reading.Board : Line(reading);
    }

    private static string Line(LengthReading reading) => reading.Picture.Length > 0 ? "picture " + (reading.ScaleOf.Length > 0 ? reading.ScaleOf : reading.Picture) : "instrument " + reading.Sighting.Hex;

    private static (double Value, double U) OneLine(IEnumerable<LengthReading> line)
    {
        var readings = line.ToList();
        var shared = readings.Max(reading => reading.ScaleShare * reading.Mm);
        var own = readings.Select(reading => (reading.Mm, Own(reading))).ToList();
        var mean = WeightedMean.Of(own);
        var spread = mean.OwnU * Math.Max(1, mean.Birge);
        return (mean.Value, Math.Sqrt((spread * spread) + (shared * shared)));
    }

    /// <summary>What is left of a reading's doubt when the shared scale is taken out; never quite nothing, so that it has a weight.</summary>
    private static double Own(LengthReading reading)
    {
        var shared = reading.ScaleShare * reading.Mm;
        return Math.Sqrt(Math.Max((reading.UMm * reading.UMm) - (shared * shared), 1e-4 * reading.UMm * reading.UMm) + 1e-18);
    }
}
