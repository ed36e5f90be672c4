namespace Lidoff.Naming.Marks;

/// <summary>One thing a place in a mark may be: a character and its probability, 0 to 1.</summary>
public readonly record struct GlyphChance(char Glyph, double P);
