namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>A QuickTime movie by its brand; its frames are often what an MP4 holds, and browsers then show it as one.</summary>
public sealed class QuickTimeRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "quicktime";

    /// <inheritdoc/>
    public string MediaType => "video/quicktime";

    /// <inheritdoc/>
    public string Says => "a QuickTime video";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) => MediaBrands.Any(head, "qt  ") ? Recognition.Marked : Recognition.No;
}
