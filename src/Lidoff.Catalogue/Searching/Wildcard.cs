namespace Lidoff.Catalogue.Searching;

/// <summary>Patterns with <c>?</c> for one sign and <c>*</c> for any number of signs.</summary>
public static class Wildcard
{
    /// <summary>True when a text holds <c>?</c> or <c>*</c>.</summary>
    public static bool Is(string text) => text.AsSpan().IndexOfAny('?', '*') >= 0;

    /// <summary>True when the pattern covers the whole text. Time grows with the product of the lengths at worst, never faster.</summary>
    public static bool Covers(ReadOnlySpan<char> pattern, ReadOnlySpan<char> text)
    {
        int p = 0, t = 0, star = -1, held = 0;
        while (t < text.Length)
        {
            if (p < pattern.Length && (pattern[p] == '?' || pattern[p] == text[t]) && pattern[p] != '*')
            {
                p++;
                t++;
            }
            else if (p < pattern.Length && pattern[p] == '*')
            {
                star = p++;
                held = t;
            }
            else if (star >= 0)
            {
                p = star + 1;
                t = ++held;
            }
            else
            {
                return false;
            }
        }

        while (p < pattern.Length && pattern[p] == '*') p++;
        return p == pattern.Length;
    }

    /// <summary>The stretches of a pattern without wildcards, in order.</summary>
    public static IReadOnlyList<string> Literals(string pattern) => pattern.Split(['?', '*'], StringSplitOptions.RemoveEmptyEntries);
}
