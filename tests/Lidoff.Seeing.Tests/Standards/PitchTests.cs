using Lidoff.Seeing.Standards;

namespace Lidoff.Seeing.Tests.Standards;

public sealed class PitchTests
{
    private static readonly SpanReading[] Cable = [new(18.7, 0.05), new(18.8, 0.05)];

    [Fact]
    public void Fourteen_ways_and_18_7_or_18_8_mm_are_1_25_and_not_1_27()
    {
        // Published question (electronics.stackexchange.com 715806): 14 conductors, 18.7 and 18.8 mm wide. (N + 1)·p = 18.75 for 1.25
        // and 19.05 for 1.27; with u = 0.05 mm for each reading the log likelihood ratio between the two is (0.12 + 0.06)/0.005 = 36.
        var verdict = PitchFromSpan.Weigh(Cable, 14, SpanKind.CableWidth);
        Assert.True(verdict.Decided);
        Assert.Equal((1.25, 15), (verdict.Best.PitchMm, verdict.Best.Gaps));
        var wrong = verdict.Candidates.Single(candidate => candidate is { PitchMm: 1.27, Gaps: 15 });
        Assert.Equal(36, verdict.Best.LogLikelihood - wrong.LogLikelihood, 9);
        Assert.Equal("The pitch is 1.25 mm: a cable of 14 with 15 gaps makes 18.75 mm.", verdict.Say);
    }

    [Fact]
    public void The_same_width_with_a_rulers_doubt_names_the_measurement_that_decides()
    {
        var verdict = PitchFromSpan.Weigh([new(18.85, 0.5)], 14, SpanKind.CableWidth);
        Assert.False(verdict.Decided);
        Assert.StartsWith("The pitch may be 1.25 or 1.27 mm. Measuring over all 14 again to ±0.07 mm", verdict.Say, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_counted_one_short_is_said()
    {
        // 13 gaps of 0.5 mm are 6.5 mm; who counted 13 leads missed one.
        var verdict = PitchFromSpan.Weigh([new(6.5, 0.02)], 13, SpanKind.FirstToLast);
        Assert.Equal((0.5, 13), (verdict.Best.PitchMm, verdict.Best.Gaps));
        Assert.EndsWith("count again, and check what was measured.", verdict.Say, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pitch_that_no_standard_has_is_not_called_one()
    {
        // 1.1 mm over 9 gaps: halfway between 1.0 and 1.25 and well off both, also for 10 and 11 gaps.
        var verdict = PitchFromSpan.Weigh([new(10.3, 0.02)], 10, SpanKind.FirstToLast);
        Assert.False(verdict.Decided);
    }
}
