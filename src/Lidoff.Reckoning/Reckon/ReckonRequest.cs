namespace Lidoff.Reckoning.Reckon;

/// <summary>Asks for one engineering number.</summary>
/// <param name="Name">Name of the calculation.</param>
/// <param name="Inputs">What was typed, in the order typed.</param>
/// <param name="Seed">Fixes the Monte Carlo draws.</param>
public sealed record ReckonRequest(string Name, IReadOnlyList<TypedInput> Inputs, ulong Seed = 1);
