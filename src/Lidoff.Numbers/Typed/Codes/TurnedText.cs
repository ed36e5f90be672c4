using Lidoff.Numbers.Failing;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>A text as it reads on its head: 901 is 106.</summary>
public static class TurnedText
{
    // Characters of plain block letters that are characters again after half a turn.
    private const string Upright = "01689HINOSXZMWnupdbq";
    private const string OnHead = "01986HINOSXZWMundpqb";

    /// <summary>What the text reads after half a turn; null where one of its characters is none then. Blanks stay.</summary>
    public static string? Of(string text)
    {
        var turned = new char[Guard.NotNull(text).Length];
        for (var i = 0; i < text.Length; i++)
        {
            var at = text[i] == ' ' ? -2 : Upright.IndexOf(text[i], StringComparison.Ordinal);
            if (at == -1) return null;
            turned[^(i + 1)] = at < 0 ? ' ' : OnHead[at];
        }

        return new(turned);
    }
}
