namespace Lidoff.Bench.Showing;

/// <summary>The beginning of a hash, where all of it would be too long; a text that is shorter, as somebody may have typed it, stays as it is.</summary>
public static class ShortHash
{
    /// <summary>The first eight digits, or all of a shorter text.</summary>
    public static string Of(string? hash) => hash is { Length: > 8 } ? hash[..8] : hash ?? "";
}
