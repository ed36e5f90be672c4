namespace Lidoff.Seeing.Pictures;

/// <summary>What a picture may cost before it is refused unseen.</summary>
/// <param name="MostPixels">Most pixels after decoding, width times height (default 400 million: 1.2 GB if it were held at once, which it never is).</param>
/// <param name="LongestSide">Longest side, px (default 65,500, what a JPEG can have).</param>
/// <param name="MostBytesInPasses">
/// Most bytes that the decoder of a JPEG in passes (progressive) may have to hold at once: two for each coefficient, so 3 a pixel with colour at half resolution and 6 at full (default 400 million:
/// 133 or 66 megapixels; measured, 100 of them at half resolution take 434 MB in all while tiles are made, 100 at full took 759 MB).
/// </param>
public sealed record PictureLimits(long MostPixels = 400_000_000, int LongestSide = 65_500, long MostBytesInPasses = 400_000_000)
{
    /// <summary>The usual limits.</summary>
    public static PictureLimits Usual { get; } = new();
}
