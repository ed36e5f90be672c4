namespace Lidoff.Evidence.Store;

/// <summary>What a merge did: entries taken in, entries that were here already, payloads that an incoming erasure removed here.</summary>
public sealed record MergeSummary(int Added, int Already, int Erased);
