namespace Lidoff.Naming.Kinds;

/// <summary>
/// A person's decision on the identity of a spot, with the reason. <paramref name="Part"/> is the part accepted or rejected, or
/// the family accepted, empty for <see cref="Verdict.NotListed"/>. Hostile text.
/// </summary>
public sealed record IdentityDecision(string Spot, Verdict Verdict, string Part, string Why);
