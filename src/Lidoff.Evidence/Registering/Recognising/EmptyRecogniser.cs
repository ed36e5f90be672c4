namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>A file without a byte: a copy that broke off, or a card that was full. It is kept as it came, and whoever opens it is told.</summary>
public sealed class EmptyRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "empty";

    /// <inheritdoc/>
    public string MediaType => "application/octet-stream";

    /// <inheritdoc/>
    public string Says => "an empty file";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) => head.Whole && head.Bytes.Length == 0 ? Recognition.Marked : Recognition.No;
}
