namespace Lidoff.Catalogue.Searching;

/// <summary>Letters and digits that a worn mark does not tell apart: 0 O, 1 I L, 2 Z, 5 S, 6 G, 8 B. Common practice, no source.</summary>
public static class LookAlikes
{
    /// <summary>The one sign that stands for all its look-alikes; upper case.</summary>
    public static char Of(char mark) => char.ToUpperInvariant(mark) switch
    {
        'O' => '0',
        'I' or 'L' or '|' => '1',
        'Z' => '2',
        'S' => '5',
        'G' => '6',
        'B' => '8',
        var other => other,
    };

    /// <summary>Every sign brought down to the one that stands for its look-alikes.</summary>
    public static string Of(string text) => string.Create(text.Length, text, static (span, from) =>
    {
        for (var i = 0; i < from.Length; i++) span[i] = Of(from[i]);
    });
}
