namespace Lidoff.Reckoning.References;

/// <summary>One value from outside a calculation is checked against, everything in the units of its inputs and its value.</summary>
/// <param name="Inputs">One number for each input, in the order of the calculation.</param>
/// <param name="Expected">The value from outside.</param>
/// <param name="Tolerance">Allowed difference: half of the last printed digit, or what the source says.</param>
/// <param name="Origin">
/// <c>published</c>, <c>independent</c> (worked by another program or method), <c>practice</c> (common practice, no source)
/// or <c>memory</c> (a published value recalled from memory).
/// </param>
/// <param name="Source">Where it stands, in words.</param>
public sealed record ReferenceRow(IReadOnlyList<double> Inputs, double Expected, double Tolerance, string Origin, string Source);
