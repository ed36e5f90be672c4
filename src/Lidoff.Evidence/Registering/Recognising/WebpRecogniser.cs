namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>WebP by its RIFF form type (RFC 9649, 2.4).</summary>
public sealed class WebpRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "webp";

    /// <inheritdoc/>
    public string MediaType => "image/webp";

    /// <inheritdoc/>
    public string Says => "a WebP picture";

    /// <inheritdoc/>
    public bool IsPicture => true;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        head.StartsWith("RIFF"u8) && head.StartsWith("WEBP"u8, at: 8)
            ? Recognition.Marked : Recognition.No;
}
