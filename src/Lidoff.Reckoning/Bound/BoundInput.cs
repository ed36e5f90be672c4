namespace Lidoff.Reckoning.Bound;

/// <summary>
/// One input of a bound reckoning: either a typed value (<c>122 mAh ± 6</c>) or a reference to something measured or
/// reckoned (<c>length:U1:long side</c>, <c>R2</c>); the other of the two is empty.
/// </summary>
public sealed record BoundInput(string Key, string Typed, string From);
