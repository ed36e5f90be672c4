using System.Text;

namespace Lidoff.Evidence.Registering.Recognising;

/// <summary>Tells text from other bytes.</summary>
internal static class TextLook
{
    private static readonly UTF8Encoding Strict = new(false, throwOnInvalidBytes: true);

    /// <summary>The text of a file's beginning; null when it is not UTF-8 text (a byte order mark is taken off).</summary>
    public static string? Text(FileHead head)
    {
        var bytes = head.Bytes.Span;
        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) bytes = bytes[3..];
        if (bytes.IsEmpty) return null;
        // The beginning may end inside a character of up to four bytes.
        for (var cut = 0; cut <= (head.Whole ? 0 : 3) && cut < bytes.Length; cut++)
        {
            try
            {
                var text = Strict.GetString(bytes[..^cut]);
                return text.Any(c => char.IsControl(c) && c is not ('\t' or '\n' or '\r' or '\f')) ? null : text;
            }
            catch (DecoderFallbackException)
            {
            }
        }
        return null;
    }

    /// <summary>Lines with something on them; the last is left out where the beginning may have cut it.</summary>
    public static IReadOnlyList<string> Lines(FileHead head)
    {
        var text = Text(head);
        if (text is null) return [];
        var lines = text.Split('\n').Select(l => l.TrimEnd('\r')).ToList();
        if (!head.Whole && lines.Count > 1) lines.RemoveAt(lines.Count - 1);
        return [.. lines.Where(l => l.Trim().Length > 0)];
    }
}
