namespace Lidoff.Seeing.Pictures;

/// <summary>What a picture may cost before it is refused unseen.</summary>
/// <param name="MostPixels">Most pixels after decoding, width times height (default 400 million: 1.2 GB if it were held at once, which it never is).</param>
/// <param name="LongestSide">Longest side, px (default 65,500, what a JPEG can have).</param>
/// <param name="MostPixelsInPasses">Most pixels of a JPEG in passes (progressive), whose decoder holds all of it: 6 bytes a pixel at full colour resolution (default 120 million).</param>
public sealed record PictureLimits(long MostPixels = 400_000_000, int LongestSide = 65_500, long MostPixelsInPasses = 120_000_000)
{
    /// <summary>The usual limits.</summary>
    public static PictureLimits Usual { get; } = new();
}
