namespace Lidoff.Naming.Knowing;

/// <summary>
/// A family of parts as a person writes it: the beginning that its members share, with <c>x</c> or <c>?</c> for a character left open:
/// STM32L4, TPS6274x, STM32F4xx. Case and signs do not count. A convention of the trade, no source.
/// </summary>
public static class PartFamily
{
    /// <summary>Fewest letters and digits that say which family is meant.</summary>
    public const int Fewest = 2;

    /// <summary>The open place of a family.</summary>
    private const char Any = '?';

    /// <summary>True when <paramref name="family"/> says enough to be one: at least <see cref="Fewest"/> letters or digits.</summary>
    public static bool Says(string family) => Stem(family).Count(each => each != Any) >= Fewest;

    /// <summary>True when <paramref name="part"/> belongs to <paramref name="family"/>: it begins as the family does.</summary>
    public static bool Holds(string family, string part)
    {
        var (stem, name) = (Stem(family), Stem(part, wild: false));
        if (name.Length < stem.Length) return false;
        for (var i = 0; i < stem.Length; i++)
        {
            if (stem[i] != Any && stem[i] != name[i]) return false;
        }

        return stem.Length > 0;
    }

    /// <summary>True when every part of <paramref name="narrow"/> belongs to <paramref name="wide"/> too.</summary>
    public static bool Covers(string wide, string narrow)
    {
        var (outer, inner) = (Stem(wide), Stem(narrow));
        return outer.Length <= inner.Length && outer.Zip(inner).All(pair => pair.First == Any || pair.First == pair.Second);
    }

    private static string Stem(string text, bool wild = true)
    {
        var stem = new List<char>(text.Length);
        foreach (var each in text)
        {
            // A small x behind a digit, or behind another one, is a place left open; "MAX" and "nRF" hold none.
            if (wild && (each == Any || (each == 'x' && stem.Count > 0 && (char.IsAsciiDigit(stem[^1]) || stem[^1] == Any)))) stem.Add(Any);
            else if (char.IsAsciiLetterOrDigit(each)) stem.Add(char.ToUpperInvariant(each));
        }

        return new([.. stem]);
    }
}
