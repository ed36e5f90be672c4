namespace Lidoff.Telling.Documents;

/// <summary>Running text.</summary>
public sealed record Paragraph(IReadOnlyList<Inline> Inlines) : Block
{
    /// <summary>A paragraph of plain text.</summary>
    public static Paragraph Of(string text) => new([new TextRun(text)]);
}
