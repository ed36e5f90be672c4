namespace Lidoff.Seeing.Kinds;

/// <summary>A sort of thing a spot can be: the word for its class, the letters its designators begin with, and what belongs to it.</summary>
public sealed record SpotClass(string Word, string Letters, string Says);
