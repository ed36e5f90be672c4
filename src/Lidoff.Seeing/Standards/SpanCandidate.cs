namespace Lidoff.Seeing.Standards;

/// <summary>One explanation of a span: a standard pitch (mm) times a count of gaps, and the natural logarithm of its likelihood up to a shared constant.</summary>
public sealed record SpanCandidate(double PitchMm, int Gaps, double LogLikelihood)
{
    /// <summary>The span it predicts, mm.</summary>
    public double SpanMm => PitchMm * Gaps;
}
