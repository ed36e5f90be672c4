namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>HEIC by the brands of its file type box (ISO/IEC 23008-12, annex B).</summary>
public sealed class HeicRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "heic";

    /// <inheritdoc/>
    public string MediaType => "image/heic";

    /// <inheritdoc/>
    public string Says => "a HEIC picture";

    /// <inheritdoc/>
    public bool IsPicture => true;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        MediaBrands.Any(head, "heic", "heix", "heim", "heis", "mif1", "msf1") && !MediaBrands.Any(head, "avif", "avis")
            ? Recognition.Marked : Recognition.No;
}
