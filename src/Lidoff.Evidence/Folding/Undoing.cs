namespace Lidoff.Evidence.Folding;

/// <summary>Why entries were taken back. Which ones stands in the entry's targets. <paramref name="Why"/> is empty where nobody gave a reason.</summary>
public sealed record Undoing(string Why);
