namespace Lidoff.Bench.Rooms.See;

/// <summary>A picture's place in a burst.</summary>
/// <param name="Burst">The burst's short name; hostile text.</param>
/// <param name="Index">Its place, from 0.</param>
/// <param name="Count">How many frames the burst has.</param>
public sealed record BurstFrame(string Burst, int Index, int Count);
