using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Claims;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>A claim as it was typed on one line: "C2: U1 is {part:U1}.", the name left out for a new one.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Text">Its sentence.</param>
public sealed record ClaimTyped(string Name, string Text)
{
    /// <summary>Reads a line; <paramref name="free"/> is the name of one that gives none. Broken braces are said here, before anything is stored.</summary>
    public static Outcome<ClaimTyped> Read(string typed, string free)
    {
        var text = typed.Trim();
        var name = free;
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon is > 1 and < 8 && text[0] == 'C' && text[1..colon].All(char.IsAsciiDigit)) (name, text) = (text[..colon], text[(colon + 1)..].Trim());
        if (text.Length == 0) return TellSentences.Empty;
        return ClaimText.Parse(text).Then(_ => new ClaimTyped(name, text));
    }

    /// <summary>The line that stores it.</summary>
    public Line Line(bool why) => Working.Line.Of("claim").Set("claim", Name).Set("text", Text).Set("why", why ? true : (bool?)null);
}
