namespace Lidoff.Catalogue.Parts;

/// <summary>A register that tells the part: its address and one value that it returns.</summary>
public sealed record IdentityRegister(int Register, long Value, Confidence Confidence);
