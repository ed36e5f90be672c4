using System.Globalization;
using Lidoff.Evidence.Entries;

namespace Lidoff.Opening.Kinds;

/// <summary>Reads a day without a time.</summary>
internal static class Day
{
    /// <summary>The day, or null when the key is missing or at fault.</summary>
    public static DateOnly? Read(PayloadReader reader, string key)
    {
        if (reader.OptionalText(key, 40) is not { } text) return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
        reader.Fail(key, "a day such as \"2026-01-12\"");
        return null;
    }
}
