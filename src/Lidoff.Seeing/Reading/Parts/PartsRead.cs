using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Reading.Parts;

/// <summary>What was read on the parts of a board in one picture.</summary>
/// <param name="Parts">Parts with a body first, each from the top down.</param>
/// <param name="Says">What is to be said of it.</param>
public sealed record PartsRead(ValueList<FoundPart> Parts, ValueList<string> Says);
