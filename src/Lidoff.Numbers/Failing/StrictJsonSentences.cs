namespace Lidoff.Numbers.Failing;

/// <summary>What a person reads when JSON from outside is refused.</summary>
public static class StrictJsonSentences
{
    /// <summary>Not JSON at all from here on.</summary>
    public static string NotJson(long line, long character) => $"Line {line}, character {character}: this is not JSON from here on.";

    /// <summary>A number that is none.</summary>
    public static string NotFinite(int line, int character, string found) =>
        $"Line {line}, character {character}: {(found.Length > 40 ? found[..40] + "…" : found)} is not a finite number.";

    /// <summary>A key given twice in one object.</summary>
    public static string Repeated(int line, int character, string key) =>
        $"Line {line}, character {character}: the key “{(key.Length > 40 ? key[..40] + "…" : key)}” is given twice in one object.";
}
