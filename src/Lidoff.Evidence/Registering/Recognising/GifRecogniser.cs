namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>GIF by its header (GIF89a, 17).</summary>
public sealed class GifRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "gif";

    /// <inheritdoc/>
    public string MediaType => "image/gif";

    /// <inheritdoc/>
    public string Says => "a GIF picture";

    /// <inheritdoc/>
    public bool IsPicture => true;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        head.StartsWith("GIF87a"u8) || head.StartsWith("GIF89a"u8)
            ? Recognition.Marked : Recognition.No;
}
