namespace Lidoff.Catalogue.Searching;

/// <summary>Signs misread, dropped or added between two texts (V. I. Levenshtein, 1966), and whether one of them parts a pattern from some stretch of a text.</summary>
public static class EditDistance
{
    /// <summary>How many signs must be changed, dropped or added to make one text of the other.</summary>
    public static int Of(ReadOnlySpan<char> one, ReadOnlySpan<char> other)
    {
        var row = new int[other.Length + 1];
        for (var j = 0; j < row.Length; j++) row[j] = j;
        for (var i = 1; i <= one.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j < row.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(above, row[j - 1]) + 1, diagonal + (one[i - 1] == other[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[^1];
    }

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
