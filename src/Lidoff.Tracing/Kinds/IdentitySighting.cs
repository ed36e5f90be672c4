namespace Lidoff.Tracing.Kinds;

/// <summary>What a register that tells the part returned.</summary>
/// <param name="Spot">The part asked; empty when only its address is known.</param>
/// <param name="Address">7-bit address it was asked at; null when not known.</param>
/// <param name="Register">Register number.</param>
/// <param name="Value">Value returned, unsigned.</param>
public sealed record IdentitySighting(string Spot, int? Address, int Register, ulong Value);
