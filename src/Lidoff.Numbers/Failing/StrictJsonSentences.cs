namespace Lidoff.Numbers.Failing;

/// <summary>What a person reads when JSON from outside is refused.</summary>
public static class StrictJsonSentences
{
    /// <summary>Not JSON from here on.</summary>
    public static Fault NotJson(long line, long character) => At(line, character, "JSON", "this is not JSON from here on.");

    /// <summary>A number that is none.</summary>
    public static Fault NotFinite(long line, long character, string found) => At(line, character, "a finite number", $"{Cut(found)} is not a finite number.");

    /// <summary>A key given twice in one object.</summary>
    public static Fault Repeated(long line, long character, string key) => At(line, character, "each key once", $"the key “{Cut(key)}” is given twice in one object.");

    private static Fault At(long line, long character, string expected, string say) => new(
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"line {line}, character {character}"),
        expected,
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Line {line}, character {character}: {say}"));

    private static string Cut(string text) => text.Length > 40 ? text[..40] + "…" : text;
}
