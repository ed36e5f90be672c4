using Lidoff.Evidence.Grading;

namespace Lidoff.Telling.Documents;

/// <summary>
/// A figure in the text: as printed, with its grade, leading to the anchor that says what it rests on. No figure is printed
/// without one.
/// </summary>
public sealed record ValueRun(string Printed, Grade Grade, string BecauseAnchor) : Inline;
