namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>Zip by a local file header, or by the end record of an empty archive (APPNOTE 4.3.7, 4.3.16).</summary>
public sealed class ZipRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "zip";

    /// <inheritdoc/>
    public string MediaType => "application/zip";

    /// <inheritdoc/>
    public string Says => "a zip archive";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) =>
        head.StartsWith([0x50, 0x4B, 3, 4]) || head.StartsWith([0x50, 0x4B, 5, 6])
            ? Recognition.Marked : Recognition.No;
}
