namespace Lidoff.Evidence.Watching;

/// <summary>One thing a look found: what it was, the file's name (hostile; empty for the folder itself), its hash where it was read, and the sentence.</summary>
public sealed record WatchEvent(WatchSight Sight, string Name, string Sha256, string Say);
