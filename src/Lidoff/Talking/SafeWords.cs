using Lidoff.Telling.Writing;

namespace Lidoff.Talking;

/// <summary>
/// Words for a terminal. File names, marks and dossier names come from anybody, and a terminal obeys control characters and turns
/// its direction where it is told to; here they are shown instead.
/// </summary>
public static class SafeWords
{
    /// <summary>The line with control and direction-changing characters shown as <c>[U+202E]</c>.</summary>
    public static string Of(string line)
    {
        // Plain words, which is nearly all of them, do not load the report's writer.
        foreach (var c in line)
        {
            if (char.IsControl(c) || c >= '\u200B') return Escaping.Shown(line);
        }

        return line;
    }
}
