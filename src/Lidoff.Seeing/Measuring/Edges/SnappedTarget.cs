namespace Lidoff.Seeing.Measuring.Edges;

/// <summary>What was done to a target to bring it onto its edges: a length's ends, a circle, or a body's sides.</summary>
public sealed record SnappedTarget(FittedLength? Length, FittedCircle? Circle, FittedBody? Body = null)
{
    /// <summary>Sentences about what stayed as clicked.</summary>
    public IEnumerable<string> Troubles => new[] { Length?.From.Trouble, Length?.To.Trouble, Circle?.Trouble }.Concat(Body?.Sides.Select(side => (string?)side.Trouble) ?? []).Where(trouble => trouble is { Length: > 0 }).Select(trouble => trouble!);
}
