using Lidoff.Evidence.Entries;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Working;

/// <summary>What a machine proposes as parts of the board in a picture. Nothing of it is stored before a person takes it.</summary>
/// <param name="Parts">Each as the reading it would be, its spot left empty, and whether a body was found around it.</param>
/// <param name="Says">What was said of it.</param>
public sealed record PartsFound(ValueList<(bool HasBody, ReadingSighting Reading)> Parts, ValueList<string> Says);
