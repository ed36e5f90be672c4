namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>WebM by the document type in its EBML header (RFC 8794, 11.2; RFC 9559 for the type's place): what browsers record.</summary>
public sealed class WebmRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "webm";

    /// <inheritdoc/>
    public string MediaType => "video/webm";

    /// <inheritdoc/>
    public string Says => "a WebM video";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head)
    {
        if (!head.StartsWith([0x1A, 0x45, 0xDF, 0xA3])) return Recognition.No;
        // DocType: its identifier 0x4282, its length 4 as a one-byte number, then the word; within the header, which is some dozens of bytes.
        var beginning = head.Bytes.Span[..Math.Min(head.Bytes.Length, 128)];
        return beginning.IndexOf([(byte)0x42, (byte)0x82, (byte)0x84, (byte)'w', (byte)'e', (byte)'b', (byte)'m']) > 0 ? Recognition.Marked : Recognition.No;
    }
}
