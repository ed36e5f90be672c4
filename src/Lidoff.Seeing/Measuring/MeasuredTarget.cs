using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>What became of one target: its length, or the faults that stand in its place.</summary>
public sealed record MeasuredTarget(string Id, Outcome<MeasuredLength> Length);
