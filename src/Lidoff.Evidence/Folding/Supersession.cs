namespace Lidoff.Evidence.Folding;

/// <summary>Why a better entry took another's place. Which two stands in the entry's targets: the old one, the new one. <paramref name="Why"/> is empty where nobody gave a reason.</summary>
public sealed record Supersession(string Why);
