using System.Globalization;
using System.Net;
using System.Text;

namespace Lidoff.Telling.Writing;

/// <summary>Makes hostile text harmless: what could be markup is escaped, what could hide or reorder text is shown by its code point.</summary>
public static class Escaping
{
    /// <summary>Text for HTML or SVG.</summary>
    public static string Html(string text) => WebUtility.HtmlEncode(Shown(text));

    /// <summary>The address of a file in the report's own folder; each part of the name is escaped, so no name can lead out of it.</summary>
    public static string RelativeFile(string file) =>
        WebUtility.HtmlEncode(string.Join('/', file.Split('/').Where(part => part is not ("" or "." or "..")).Select(Uri.EscapeDataString)));

    /// <summary>Markdown text: every character that Markdown or HTML could read is escaped.</summary>
    public static string Markdown(string text)
    {
        var safe = new StringBuilder();
        foreach (var c in Shown(text))
        {
            if (c is '<') safe.Append("&lt;");
            else if (c is '&') safe.Append("&amp;");
            else if (@"\`*_{}[]()#+!|>~".Contains(c)) safe.Append('\\').Append(c);
            else safe.Append(c);
        }

        return safe.ToString();
    }

    /// <summary>Control and direction-changing characters shown as <c>[U+202E]</c>; everything else as it is.</summary>
    public static string Shown(string text)
    {
        if (!text.Any(Hidden)) return text;
        var shown = new StringBuilder();
        foreach (var c in text)
        {
            if (Hidden(c)) shown.Append(CultureInfo.InvariantCulture, $"[U+{(int)c:X4}]");
            else shown.Append(c);
        }

        return shown.ToString();
    }

    // Bidirectional controls of Unicode (UAX #9) and zero-width characters reorder or hide what a reader sees.
    private static bool Hidden(char c) => (char.IsControl(c) && c is not ('\n' or '\t')) || c is >= '\u202A' and <= '\u202E' or >= '\u2066' and <= '\u2069' or '\u200B' or '\u200E' or '\u200F' or '\uFEFF';
}
