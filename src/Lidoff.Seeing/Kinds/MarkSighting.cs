using Lidoff.Evidence.Entries;

namespace Lidoff.Seeing.Kinds;

/// <summary>A mark on a body, line by line from the top. Hostile text.</summary>
public sealed record MarkSighting(string Spot, ValueList<MarkLine> Lines)
{
    /// <summary>The mark as one text: lines with '/' between them, <c>?</c> where a place was not read.</summary>
    public string Text => string.Join("/", Lines.Select(line => line.Text));

    /// <summary>The mark as it is typed and shown: like <see cref="Text"/>, but alternatives stay, as in <c>CIAAE|B0</c>.</summary>
    public string Written => string.Join("/", Lines.Select(line => line.Written));
}
