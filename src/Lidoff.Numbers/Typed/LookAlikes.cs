namespace Lidoff.Numbers.Typed;

/// <summary>
/// Characters that are taken for one another. The letters of other alphabets follow the visual pairs of Unicode Technical
/// Standard 39 (written from memory, capital and small Cyrillic and Greek only); the classes among Latin characters are
/// common practice of reading small laser marks, no source.
/// </summary>
public static class LookAlikes
{
    private const string Cyrillic = "АВЕКМНОРСТХУІЈЅаеорсхуіјѕԛԝҮһ";
    private const string CyrillicLatin = "ABEKMHOPCTXYIJSaeopcxyijsqwYh";
    private const string Greek = "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧοϲνικυ";
    private const string GreekLatin = "ABEZHIKMNOPTYXocviku";

    private static readonly string[] Classes = ["0ODQ", "1IL", "2Z", "5S", "6G", "8B", "UV"];

    /// <summary>The ASCII letter a full-width, Cyrillic or Greek letter looks like; null for any other character, Latin letters included.</summary>
    public static char? Latin(char c)
    {
        if (c is >= '\uFF01' and <= '\uFF5E' and not '\uFF0D' and not '\uFF0B') return (char)(c - 0xFEE0);
        var at = Cyrillic.IndexOf(c, StringComparison.Ordinal);
        if (at >= 0) return CyrillicLatin[at];
        at = Greek.IndexOf(c, StringComparison.Ordinal);
        return at >= 0 ? GreekLatin[at] : null;
    }

    /// <summary>The characters one capital letter or digit is taken for, itself first; only itself when it has no look-alike.</summary>
    public static string Class(char c)
    {
        foreach (var members in Classes)
        {
            if (members.Contains(c, StringComparison.Ordinal)) return c + members.Replace(c.ToString(), "", StringComparison.Ordinal);
        }

        return c.ToString();
    }

    /// <summary>The character that stands for its whole class in a search key: the class's first.</summary>
    public static char Key(char c)
    {
        foreach (var members in Classes)
        {
            if (members.Contains(c, StringComparison.Ordinal)) return members[0];
        }

        return c;
    }

    /// <summary>True when two characters are the same or look alike.</summary>
    public static bool Alike(char a, char b) => Key(a) == Key(b);

    /// <summary>The character as it reads with the mark turned by half a turn; null when it then reads as none.</summary>
    public static char? Turned(char c)
    {
        const string from = "0689HINOSXZ1WM";
        const string to = "0986HINOSXZ1MW";
        var at = from.IndexOf(c, StringComparison.Ordinal);
        return at >= 0 ? to[at] : null;
    }

    /// <summary>True for characters that take no room and can hide in pasted text: joiners, direction marks, byte order mark.</summary>
    public static bool IsInvisible(char c) =>
        c is >= '\u200B' and <= '\u200F' or >= '\u202A' and <= '\u202E' or >= '\u2060' and <= '\u2064' or >= '\u2066' and <= '\u2069' or '\uFEFF' or '\u00AD';
}
