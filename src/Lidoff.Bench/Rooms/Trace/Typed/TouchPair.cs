namespace Lidoff.Bench.Rooms.Trace.Typed;

/// <summary>The two points that the probes are on.</summary>
/// <param name="A">One.</param>
/// <param name="B">The other; the black lead for volts.</param>
public sealed record TouchPair(string A, string B);
