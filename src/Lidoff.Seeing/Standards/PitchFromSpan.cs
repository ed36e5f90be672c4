using Lidoff.Numbers;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Standards;

/// <summary>
/// Finds the pitch behind a measured span by weighing every standard pitch with the count of gaps at N − 1, N and N + 1: leads are
/// counted from one, gaps from zero, and a cable's width has one gap more than ways.
/// </summary>
public static class PitchFromSpan
{
    /// <summary>Weighs the readings.</summary>
    /// <param name="readings">At least one.</param>
    /// <param name="count">Leads or ways counted, two or more.</param>
    /// <param name="kind">What was measured.</param>
    public static SpanVerdict Weigh(IReadOnlyList<SpanReading> readings, int count, SpanKind kind)
    {
        Guard.That(readings.Count > 0 && count >= 2, "at least one reading and two leads");
        foreach (var reading in readings) Guard.That(reading.Mm > 0 && reading.UMm > 0, "readings and uncertainties above zero");
        var candidates = StandardSizes.Pitches
            .SelectMany(pitch => new[] { count - 1, count, count + 1 }.Select(gaps => new SpanCandidate(pitch, gaps, Likelihood(readings, pitch * gaps))))
            .OrderByDescending(candidate => candidate.LogLikelihood).ThenBy(candidate => candidate.PitchMm).ThenBy(candidate => candidate.Gaps).ToList();
        var best = candidates[0];
        var rival = candidates.First(candidate => candidate.PitchMm != best.PitchMm);
        var logRatio = best.LogLikelihood - Math.Max(rival.LogLikelihood, NoStandard(readings));
        var decided = logRatio >= Elementary.Log(StandardRank.LeastRatio);
        return new(candidates, logRatio, decided, decided ? SeeingSentences.PitchDecided(best, count, kind) : Undecided(readings, best, rival, count));
    }

    private static double Likelihood(IReadOnlyList<SpanReading> readings, double span) =>
        readings.Sum(reading => StandardRank.LogDensity(reading.Mm - span, reading.UMm));

    /// <summary>No standard pitch: the span that fits the readings best, spread evenly within a factor e.</summary>
    private static double NoStandard(IReadOnlyList<SpanReading> readings)
    {
        var weight = readings.Sum(reading => 1 / (reading.UMm * reading.UMm));
        var mean = readings.Sum(reading => reading.Mm / (reading.UMm * reading.UMm)) / weight;
        // Integrating the likelihood over a flat prior of density 1/mean leaves the peak times its width √(2π/weight).
        return Likelihood(readings, mean) + (0.5 * Elementary.Log(2 * Math.PI / weight)) - Elementary.Log(mean);
    }

    private static string Undecided(IReadOnlyList<SpanReading> readings, SpanCandidate best, SpanCandidate rival, int count)
    {
        var apart = Math.Abs(best.SpanMm - rival.SpanMm);
        var spread = 1 / Math.Sqrt(readings.Sum(reading => 1 / (reading.UMm * reading.UMm)));
        // Ten to one when the truth is met exactly needs apart²/(2u²) = ln 10; half of that leaves room for the reading's own error.
        var needed = apart / Math.Sqrt(2 * Elementary.Log(StandardRank.LeastRatio)) / 2;
        return best.Gaps == rival.Gaps && needed < spread
            ? SeeingSentences.MeasureSpanBetter(best, rival, count, needed)
            : best.Gaps != rival.Gaps && apart < spread * 2 ? SeeingSentences.CountAgain(best, rival) : SeeingSentences.MeasureOneGap(best, rival);
    }
}
