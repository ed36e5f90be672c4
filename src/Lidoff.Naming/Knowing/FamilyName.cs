namespace Lidoff.Naming.Knowing;

/// <summary>
/// The stem that parts of one family share: the letters in front and the leading digits of the first number (nRF52832 gives nRF52,
/// BQ24075 gives BQ24); where that number is short, the letters behind it, two at most (W25Q64 gives W25Q). A convention of ours:
/// makers keep no common rule.
/// </summary>
public static class FamilyName
{
    /// <summary>The stem as written in <paramref name="part"/>, signs left out; the whole name where it holds no digit.</summary>
    public static string Of(string part)
    {
        // What stands behind a hyphen is a version (KXTJ3-1057), unless the number itself does (MPU-6500).
        var hyphen = part.IndexOf('-', StringComparison.Ordinal);
        var head = hyphen > 0 && part.AsSpan(0, hyphen).IndexOfAnyInRange('0', '9') >= 0 ? part[..hyphen] : part;
        var name = new string([.. head.Where(char.IsAsciiLetterOrDigit)]);
        var digit = name.AsSpan().IndexOfAnyInRange('0', '9');
        if (digit < 0) return name;
        var end = digit;
        while (end < name.Length && char.IsAsciiDigit(name[end])) end++;
        var run = end - digit;
        if (run > 2) return name[..(digit + (run == 3 ? 1 : 2))];
        var letters = end;
        // Logic series carry the family behind 74: all its letters.
        var most = name.AsSpan(digit, run) is "74" ? 5 : 2;
        while (letters < name.Length && letters < end + most && !char.IsAsciiDigit(name[letters])) letters++;
        return name[..letters];
    }

    /// <summary>The stem without regard to case, for grouping.</summary>
    internal static string KeyOf(string part) => Of(part).ToUpperInvariant();
}
