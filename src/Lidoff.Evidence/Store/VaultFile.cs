namespace Lidoff.Evidence.Store;

/// <summary>A file in the vault: the hash of its content, which is its name there, and its length.</summary>
public sealed record VaultFile(string Sha256, long Bytes);
