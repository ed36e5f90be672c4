namespace Lidoff.Seeing.Reading.Lattices;

/// <summary>One whole reading of a line and the probability that it is right, 0 to 1.</summary>
public readonly record struct LineText(string Text, double P);
