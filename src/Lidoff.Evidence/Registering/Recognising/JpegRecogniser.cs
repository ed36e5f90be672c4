namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>JPEG by its start of image and the marker after it (ITU-T T.81, B.1.1.2).</summary>
public sealed class JpegRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "jpeg";

    /// <inheritdoc/>
    public string MediaType => "image/jpeg";

    /// <inheritdoc/>
    public string Says => "a JPEG picture";

    /// <inheritdoc/>
    public bool IsPicture => true;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        head.StartsWith([0xFF, 0xD8, 0xFF])
            ? Recognition.Marked : Recognition.No;
}
