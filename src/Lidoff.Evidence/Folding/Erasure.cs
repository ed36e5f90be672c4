namespace Lidoff.Evidence.Folding;

/// <summary>Why contents were removed for good. Whose stands in the entry's targets. <paramref name="Why"/> is empty where nobody gave a reason.</summary>
public sealed record Erasure(string Why);
