namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>What was done to a target to bring it onto its edges: a length's ends, or a circle.</summary>
public sealed record SnappedTarget(FittedLength? Length, FittedCircle? Circle)
{
    /// <summary>Sentences about what stayed as clicked.</summary>
    public IEnumerable<string> Troubles => new[] { Length?.From.Trouble, Length?.To.Trouble, Circle?.Trouble }.Where(trouble => trouble is { Length: > 0 }).Select(trouble => trouble!);
}
