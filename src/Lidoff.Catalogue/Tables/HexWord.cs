using System.Globalization;

namespace Lidoff.Catalogue.Tables;

/// <summary>Reads whole numbers as engineers write them in part tables: <c>0x4A</c>, <c>4Ah</c>, <c>74</c>.</summary>
public static class HexWord
{
    /// <summary>The number, or null when it is none or does not fit 63 bits. A word without sign of its base is decimal.</summary>
    public static long? Read(string text)
    {
        var word = text.Trim();
        if (word.StartsWith("0x", StringComparison.OrdinalIgnoreCase)) return Hex(word[2..]);
        if (word.Length > 1 && word[^1] is 'h' or 'H') return Hex(word[..^1]);
        return long.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var value) ? value : null;
    }

    private static long? Hex(string digits) =>
        digits.Length is > 0 and <= 16 && long.TryParse(digits, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var value) && value >= 0
            ? value : null;
}
