namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>AVIF by the brands of its file type box (AV1 Image File Format, 6).</summary>
public sealed class AvifRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "avif";

    /// <inheritdoc/>
    public string MediaType => "image/avif";

    /// <inheritdoc/>
    public string Says => "an AVIF picture";

    /// <inheritdoc/>
    public bool IsPicture => true;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        MediaBrands.Any(head, "avif", "avis")
            ? Recognition.Marked : Recognition.No;
}
