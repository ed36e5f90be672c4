using System.Globalization;

namespace Lidoff.Bench.Showing;

/// <summary>Names that count up: Q1, Q2 …</summary>
internal static class FreeName
{
    /// <summary>The first name with these letters that is not taken; upper and lower case count as one.</summary>
    public static string Of(string letters, IEnumerable<string> taken)
    {
        var used = taken.ToHashSet(StringComparer.OrdinalIgnoreCase);
        for (var number = 1; ; number++)
        {
            var name = letters + number.ToString(CultureInfo.InvariantCulture);
            if (!used.Contains(name)) return name;
        }
    }
}
