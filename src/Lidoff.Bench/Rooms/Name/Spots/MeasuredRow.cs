using Lidoff.Evidence.Grading;

namespace Lidoff.Bench.Rooms.Name.Spots;

/// <summary>Something measured about a spot.</summary>
/// <param name="What">"long side".</param>
/// <param name="Reference">What a claim writes to lean on it.</param>
/// <param name="Value">Value with its doubt; the reason where there is none.</param>
/// <param name="Interval">90 % interval; empty where there is none.</param>
/// <param name="Grade">How well it is known.</param>
public sealed record MeasuredRow(string What, string Reference, string Value, string Interval, Grade Grade);
