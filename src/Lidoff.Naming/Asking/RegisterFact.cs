namespace Lidoff.Naming.Asking;

/// <summary>A register read back: its address and the value it returned.</summary>
public sealed record RegisterFact(int Register, long Value);
