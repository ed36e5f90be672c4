using Lidoff.Numbers.Quantities;

namespace Lidoff.Bench.Showing;

/// <summary>Something of a dossier that has a number.</summary>
/// <param name="Reference">As it is written, <c>length:U1:width</c>.</param>
/// <param name="Dimension">What it measures: an input takes nothing else.</param>
public sealed record NumberReference(string Reference, Dimension Dimension);
