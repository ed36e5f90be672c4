namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>PDF by its header. ISO 32000-1 wants it first; readers accept it within the first 1,024 bytes, and so do files in the wild.</summary>
public sealed class PdfRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "pdf";

    /// <inheritdoc/>
    public string MediaType => "application/pdf";

    /// <inheritdoc/>
    public string Says => "a PDF document";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) => head.Bytes.Span[..Math.Min(1024, head.Bytes.Length)].IndexOf("%PDF-"u8) switch
    {
        0 => Recognition.Marked,
        // A file that bears another kind's mark first is that kind: pictures may carry anything further down.
        > 0 => Recognition.Shaped,
        _ => Recognition.No,
    };
}
