namespace Lidoff.Bench.Rooms.Trace.Typed;

/// <summary>Takes the reason off a typed line: what stands behind "because".</summary>
internal static class Reason
{
    private const string Word = " because ";

    /// <summary>The line without it, and the reason; empty where there is none.</summary>
    public static (string Line, string Why) Of(string? text)
    {
        var line = (text ?? "").Trim();
        var at = line.IndexOf(Word, StringComparison.OrdinalIgnoreCase);
        return at < 0 ? (line, "") : (line[..at].Trim(), line[(at + Word.Length)..].Trim());
    }

    /// <summary>Words parted by blanks, commas or semicolons.</summary>
    public static List<string> Words(string text) => [.. text.Split([' ', '\t', ',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
}
