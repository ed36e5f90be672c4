namespace Lidoff.Naming.Dates;

/// <summary>
/// What the characters of a code may be, with shares: case and separators set aside, <c>?</c> any digit (at most two of them), and a
/// slash in front, which may be a separator or the half-printed stroke of a 7 (a reported case: "/718" was a broken 7).
/// </summary>
internal static class DateSpelling
{
    internal static IReadOnlyList<(string Text, double Share)> Of(string code)
    {
        var trimmed = code.Trim().ToUpperInvariant();
        var plain = Strip(trimmed);
        var spellings = new List<(string Text, double Share)>();
        if (trimmed.StartsWith('/'))
        {
            spellings.Add(("7" + plain, 0.5));
            spellings.Add((plain, 0.5));
        }
        else
        {
            spellings.Add((plain, 1));
        }
        return plain.Count(c => c == '?') is > 0 and <= 2 ? [.. spellings.SelectMany(s => Fill(s.Text, s.Share))] : spellings;
    }

    private static string Strip(string text) => new([.. text.Where(c => char.IsAsciiLetterOrDigit(c) || c == '?')]);

    private static IEnumerable<(string Text, double Share)> Fill(string text, double share)
    {
        var at = text.IndexOf('?', StringComparison.Ordinal);
        if (at < 0) return [(text, share)];
        return Enumerable.Range(0, 10).SelectMany(d => Fill(text[..at] + (char)('0' + d) + text[(at + 1)..], share / 10));
    }
}
