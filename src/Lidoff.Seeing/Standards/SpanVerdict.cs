namespace Lidoff.Seeing.Standards;

/// <summary>
/// What a span says of the pitch: every explanation, likeliest first; the natural logarithm of the likelihood ratio between the
/// first and its strongest rival (the second, or no standard pitch); and a sentence: the answer, or the one measurement that would decide.
/// </summary>
public sealed record SpanVerdict(IReadOnlyList<SpanCandidate> Candidates, double LogRatio, bool Decided, string Say)
{
    /// <summary>The likeliest explanation, decided or not.</summary>
    public SpanCandidate Best => Candidates[0];
}
