using System.Text.Json;

namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>One JSON object a line.</summary>
public sealed class JsonLinesRecogniser : IFileRecogniser
{
    /// <inheritdoc/>
    public string Name => "json-lines";

    /// <inheritdoc/>
    public string MediaType => "application/jsonl";

    /// <inheritdoc/>
    public string Says => "lines of JSON";

    /// <inheritdoc/>
    public bool IsPicture => false;

    /// <inheritdoc/>
    public Recognition Look(FileHead head)
    {
        var lines = TextLook.Lines(head);
        return lines.Count > 0 && lines.All(IsObject) ? Recognition.Shaped : Recognition.No;
    }

    private static bool IsObject(string line)
    {
        if (!line.TrimStart().StartsWith('{')) return false;
        try
        {
            using var _ = JsonDocument.Parse(line);
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
