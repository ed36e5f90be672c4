namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>MP4 and what phones make of it, by the brands of its file type box (ISO/IEC 14496-12, annex E; 14496-14). A picture bears other brands first.</summary>
public sealed class Mp4Recogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "mp4";

    /// <inheritdoc/>
    public string MediaType => "video/mp4";

    /// <inheritdoc/>
    public string Says => "an MP4 video";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        MediaBrands.Any(head, "isom", "iso2", "iso4", "iso5", "iso6", "mp41", "mp42", "avc1", "dash", "M4V ", "3gp4", "3gp5", "3gp6") && !MediaBrands.Any(head, "avif", "avis", "heic", "heix", "heim", "heis", "mif1", "msf1", "M4A ")
            ? Recognition.Marked : Recognition.No;
}
