namespace Lidoff.Telling.Documents;

/// <summary>A caution, printed where it bites, in words and with a sign, never by colour alone.</summary>
public sealed record Caution(string Text) : Block;
