namespace Lidoff.Catalogue.Joining;

/// <summary>The form of a part name that decides whether two rows mean one part: upper case, without blanks, hyphens and underscores ("ICM-20602" = "ICM20602").</summary>
public static class PartFold
{
    /// <summary>Folds a name. Everything but blanks, hyphens and underscores keeps its meaning: "LM1117-2.5" is not "LM1117-25".</summary>
    public static string Of(string name)
    {
        Span<char> folded = name.Length <= 256 ? stackalloc char[name.Length] : new char[name.Length];
        var length = 0;
        foreach (var mark in name)
        {
            if (mark is '-' or '_' || char.IsWhiteSpace(mark)) continue;
            folded[length++] = char.ToUpperInvariant(mark);
        }

        return new string(folded[..length]);
    }
}
