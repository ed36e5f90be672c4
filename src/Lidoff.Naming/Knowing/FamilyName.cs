namespace Lidoff.Naming.Knowing;

/// <summary>
/// The stem that parts of one family share: the letters in front and the leading digits of the first number (nRF52832 gives nRF52,
/// BMI160 would give BMI1); where that number is short, the letters behind it, two at most (LIS2DH12 gives LIS2DH). A convention of
/// ours: makers keep no common rule.
/// </summary>
public static class FamilyName
{
    /// <summary>The stem as written in <paramref name="part"/>, signs left out; the whole name where it holds no digit.</summary>
    public static string Of(string part)
    {
        var name = new string([.. part.Where(char.IsAsciiLetterOrDigit)]);
        var digit = name.AsSpan().IndexOfAnyInRange('0', '9');
        if (digit < 0) return name;
        var end = digit;
        while (end < name.Length && char.IsAsciiDigit(name[end])) end++;
        var run = end - digit;
        if (run > 2) return name[..(digit + (run == 3 ? 1 : 2))];
        var letters = end;
        while (letters < name.Length && letters < end + 2 && !char.IsAsciiDigit(name[letters])) letters++;
        return name[..letters];
    }

    /// <summary>The stem without regard to case, for grouping.</summary>
    internal static string KeyOf(string part) => Of(part).ToUpperInvariant();
}
