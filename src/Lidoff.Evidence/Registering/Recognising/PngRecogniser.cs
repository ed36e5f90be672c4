namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>PNG by its signature (W3C PNG, 5.2).</summary>
public sealed class PngRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "png";

    /// <inheritdoc/>
    public string MediaType => "image/png";

    /// <inheritdoc/>
    public string Says => "a PNG picture";

    /// <inheritdoc/>
    public bool IsPicture => true;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        head.StartsWith([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A])
            ? Recognition.Marked : Recognition.No;
}
