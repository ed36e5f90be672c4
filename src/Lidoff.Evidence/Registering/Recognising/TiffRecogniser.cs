namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>TIFF by its byte order and version 42 (TIFF 6.0, section 2), or 43 in files beyond 4 GB.</summary>
public sealed class TiffRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "tiff";

    /// <inheritdoc/>
    public string MediaType => "image/tiff";

    /// <inheritdoc/>
    public string Says => "a TIFF picture";

    /// <inheritdoc/>
    public bool IsPicture => true;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        head.StartsWith([0x49, 0x49, 42, 0]) || head.StartsWith([0x4D, 0x4D, 0, 42])
        || head.StartsWith([0x49, 0x49, 43, 0]) || head.StartsWith([0x4D, 0x4D, 0, 43])
            ? Recognition.Marked : Recognition.No;
}
