namespace Lidoff.Evidence.Entries;

/// <summary>C2 before C10: runs of digits compare as numbers, everything else ordinally.</summary>
public sealed class NaturalOrder : IComparer<string>
{
    /// <summary>The one instance.</summary>
    public static NaturalOrder Instance { get; } = new();

    private NaturalOrder()
    {
    }

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        var (a, b) = (x ?? "", y ?? "");
        var (i, j) = (0, 0);
        while (i < a.Length && j < b.Length)
        {
            if (char.IsAsciiDigit(a[i]) && char.IsAsciiDigit(b[j]))
            {
                var (first, second) = (Digits(a, ref i), Digits(b, ref j));
                var order = first.Length != second.Length ? first.Length - second.Length : string.CompareOrdinal(first, second);
                if (order != 0) return order;
            }
            else if (a[i] != b[j])
            {
                return a[i] - b[j];
            }
            else
            {
                i++;
                j++;
            }
        }

        var rest = (a.Length - i) - (b.Length - j);
        return rest != 0 ? rest : string.CompareOrdinal(a, b);
    }

    private static string Digits(string text, ref int at)
    {
        var start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return text[start..at].TrimStart('0');
    }
}
