namespace Lidoff.Bench.Data;

/// <summary>A file that is stored for good: its hash, what it was recognised as in words, and the entry that took it in.</summary>
public sealed record AddedFile(string Sha256, string Kind, string Entry);
