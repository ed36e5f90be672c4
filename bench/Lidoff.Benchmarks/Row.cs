namespace Lidoff.Benchmarks;

/// <summary>One figure: what was measured, against what, the target in words, and whether it was met.</summary>
public sealed record Row(string What, string Measured, string Baseline, string Ratio, string Target, bool Met);
