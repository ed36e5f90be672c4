namespace Lidoff.Bench.Rooms.Trace.Book;

/// <summary>Classes of strokes, which the style sheet draws.</summary>
internal static class Strokes
{
    /// <summary>The class of a touch's string.</summary>
    public static string Class(StringKind kind) => "string " + kind.ToString().ToLowerInvariant();
}
