namespace Lidoff.Bench.Rooms.Tell;

/// <summary>One value of a claim that is not what was published of it.</summary>
/// <param name="Reference">What it is.</param>
/// <param name="Before">What readers were told.</param>
/// <param name="Now">What it is now.</param>
public sealed record MovedRow(string Reference, string Before, string Now);
