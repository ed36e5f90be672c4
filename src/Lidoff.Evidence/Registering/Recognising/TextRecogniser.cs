namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>Plain text: UTF-8 without control characters. Also what a web page or a drawing in XML is served as, so that it cannot run.</summary>
public sealed class TextRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "text";

    /// <inheritdoc/>
    public string MediaType => "text/plain";

    /// <inheritdoc/>
    public string Says => "a text";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head) => TextLook.Text(head) is null ? Recognition.No : Recognition.Plausible;
}
