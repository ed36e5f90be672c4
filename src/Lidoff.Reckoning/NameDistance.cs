namespace Lidoff.Reckoning;

/// <summary>How far two names are apart, for offering what may have been meant.</summary>
internal static class NameDistance
{
    /// <summary>At most <paramref name="most"/> of the known names, nearest first; names further off than a third of their length are left out.</summary>
    public static IReadOnlyList<string> Nearest(string name, IEnumerable<string> known, int most)
    {
        var plain = name.Trim().ToLowerInvariant().Replace('-', '_').Replace(' ', '_');
        return [.. known
            .Select(candidate => (candidate, distance: plain.Length >= 3 && candidate.Contains(plain, StringComparison.Ordinal) ? 0 : Between(plain, candidate)))
            .Where(pair => pair.distance <= Math.Max(2, pair.candidate.Length / 3))
            .OrderBy(pair => pair.distance).ThenBy(pair => pair.candidate, StringComparer.Ordinal)
            .Take(most).Select(pair => pair.candidate)];
    }

    // Levenshtein 1966: letters to be put in, left out or replaced.
    private static int Between(string a, string b)
    {
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) row[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(replaced, 1 + Math.Min(row[j], row[j - 1]));
            }
        }

        return row[b.Length];
    }
}
