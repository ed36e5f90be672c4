using Lidoff.Evidence.Entries;

namespace Lidoff.Tracing.Kinds;

/// <summary>Reads points, and keys that only make sense beside another.</summary>
internal static class Points
{
    /// <summary>Longest name of a point, spot or net.</summary>
    public const int LongestName = 40;

    /// <summary>A point that must be there.</summary>
    public static TouchPoint Read(PayloadReader reader, string key) => new(reader.Text(key, LongestName).Trim());

    /// <summary>A fault at <paramref name="other"/> when <paramref name="key"/> is given without it.</summary>
    public static void Needs(PayloadReader reader, string key, string other)
    {
        if (reader.Has(key) && !reader.Has(other)) reader.Fail(other, $"given when \"{key}\" is");
    }
}
