using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Working;

/// <summary>What was made and stored: the picture's hash, that of the one beside it (empty for none), and what was said.</summary>
public sealed record ComposedPicture(string Sha256, string Second, ValueList<string> Says);
