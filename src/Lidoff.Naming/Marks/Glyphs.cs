namespace Lidoff.Naming.Marks;

/// <summary>
/// The alphabet of marks: ten digits and twenty-six capitals. Small letters count as capitals, signs and blanks are not part of a
/// mark's text, and letters of other alphabets that look Latin count as those.
/// </summary>
internal static class Glyphs
{
    internal const int Count = 36;

    // Look-alikes: an industrial vision manual's list, ring-readers' reports, and worn print (trade facts, S17).
    private static readonly string[] Alike = ["0ODQ", "1ILT7", "5S", "8B3", "6G", "2Z7", "UV0", "WM", "38", "CG", "4A", "KX", "VY", "PRF", "EF", "HN", "69", "NM", "35S"];

    // Capitals of Cyrillic and Greek that are drawn like a Latin one, in pairs.
    private const string Homoglyphs = "АAВBЕEКKМMНHОOРPСCТTХXУYΑAΒBΕEΖZΗHΙIΚKΜMΝNΟOΡPΤTΥYΧX";

    /// <summary>How often a glyph stands in a mark about which nothing is known: digits a little more often than letters. A judgement, no source.</summary>
    internal static double Background(int glyph) => glyph < 10 ? 0.045 : 0.55 / 26;

    /// <summary>0 to 35, or -1 for what is not part of a mark's text.</summary>
    internal static int Index(char c)
    {
        if (c is >= '0' and <= '9') return c - '0';
        if (c is >= 'A' and <= 'Z') return c - 'A' + 10;
        if (c is >= 'a' and <= 'z') return c - 'a' + 10;
        var at = Foreign(c);
        return at < 0 ? -1 : Index(Homoglyphs[at + 1]);
    }

    /// <summary>True for a letter of another alphabet that looks Latin.</summary>
    internal static bool IsHomoglyph(char c) => Foreign(c) >= 0;

    internal static char Char(int glyph) => (char)(glyph < 10 ? '0' + glyph : 'A' + glyph - 10);

    internal static bool IsDigit(int glyph) => glyph is >= 0 and < 10;

    /// <summary>True when the two are often taken for each other.</summary>
    internal static bool LookAlike(int a, int b)
    {
        var (x, y) = (Char(a), Char(b));
        return Array.Exists(Alike, g => g.Contains(x, StringComparison.Ordinal) && g.Contains(y, StringComparison.Ordinal));
    }

    private static int Foreign(char c)
    {
        if (c < 0x370 || c > 0x44F) return -1;
        var upper = char.ToUpperInvariant(c);
        for (var i = 0; i < Homoglyphs.Length; i += 2)
        {
            if (Homoglyphs[i] == upper) return i;
        }
        return -1;
    }
}
