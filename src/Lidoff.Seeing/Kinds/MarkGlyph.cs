namespace Lidoff.Seeing.Kinds;

/// <summary>One character that may stand at a place, the empty text where nothing may stand there, and how probable it is (0 to 1).</summary>
public readonly record struct MarkGlyph(string Character, double P);
