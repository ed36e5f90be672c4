using Lidoff.Evidence.Entries;

namespace Lidoff.Reckoning.Bound;

/// <summary>Binds a calculation to what the dossier knows: the same question, reckoned anew whenever its inputs move.</summary>
/// <param name="Reckoning">Its designator, R1.</param>
/// <param name="Calculation">Name of the calculation.</param>
/// <param name="Inputs">In the order written, each key once.</param>
/// <param name="Says">The question it answers; empty when none was written.</param>
public sealed record ReckonBinding(string Reckoning, string Calculation, ValueList<BoundInput> Inputs, string Says);
