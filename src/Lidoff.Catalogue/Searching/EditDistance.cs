namespace Lidoff.Catalogue.Searching;

/// <summary>Tells whether one sign misread, dropped or added parts a pattern from some stretch of a text.</summary>
public static class EditDistance
{
    /// <summary>True when some stretch of <paramref name="text"/> lies within one edit of <paramref name="pattern"/> (P. H. Sellers, 1980: the first row of the table is free).</summary>
    public static bool WithinOne(ReadOnlySpan<char> pattern, ReadOnlySpan<char> text)
    {
        if (pattern.Length <= 1) return true;
        Span<int> column = pattern.Length < 128 ? stackalloc int[pattern.Length + 1] : new int[pattern.Length + 1];
        for (var i = 0; i < column.Length; i++) column[i] = i;
        foreach (var mark in text)
        {
            var diagonal = 0;
            for (var i = 1; i < column.Length; i++)
            {
                var left = column[i];
                column[i] = Math.Min(Math.Min(left, column[i - 1]) + 1, diagonal + (pattern[i - 1] == mark ? 0 : 1));
                diagonal = left;
            }

            if (column[pattern.Length] <= 1) return true;
        }

        return false;
    }
}
