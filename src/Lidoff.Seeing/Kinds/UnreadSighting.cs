using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>A machine looked for a mark and could not read it: where, with what, and why. As long as nothing of that changes it is not tried again unless that is asked for.</summary>
/// <param name="Spot">On what.</param>
/// <param name="Places">Where it was looked for, a place a picture.</param>
/// <param name="Networks">Hashes of finder and reader.</param>
/// <param name="Program">Version of the program that tried.</param>
/// <param name="Says">Why it could not be read.</param>
public sealed record UnreadSighting(string Spot, ValueList<UnreadPlace> Places, ValueList<string> Networks, string Program, ValueList<string> Says);
