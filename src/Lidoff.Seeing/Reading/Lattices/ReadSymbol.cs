namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>One symbol that may stand at a place, the empty text where nothing may stand there, and how probable it is (0 to 1).</summary>
public readonly record struct ReadSymbol(string Symbol, double P);
