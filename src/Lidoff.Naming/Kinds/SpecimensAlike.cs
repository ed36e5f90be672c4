using Lidoff.Evidence.Entries;

namespace Lidoff.Naming.Kinds;

/// <summary>
/// A person's word that the named specimens hold the same part at a spot, with the reason: what was seen on one of them then speaks for
/// all. Hostile text.
/// </summary>
public sealed record SpecimensAlike(string Spot, ValueList<string> Specimens, string Why);
