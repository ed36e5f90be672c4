using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>
/// Names an entry for good: the SHA-256 of its stored bytes, 64 lower-case hex digits. Ordered ordinally, which is the order
/// sets are put in before anything is summed or drawn.
/// </summary>
public readonly record struct EntryId(string Hex) : IComparable<EntryId>
{
    /// <inheritdoc/>
    public int CompareTo(EntryId other) => string.CompareOrdinal(Hex, other.Hex);

    /// <summary>True when <paramref name="text"/> could be an entry's id.</summary>
    public static bool Fits(string? text) => text is { Length: 64 } && text.All(c => c is >= '0' and <= '9' or >= 'a' and <= 'f');

    /// <inheritdoc/>
    public override string ToString() => Hex;

    /// <inheritdoc cref="string.CompareOrdinal(string, string)"/>
    public static bool operator <(EntryId a, EntryId b) => a.CompareTo(b) < 0;

    /// <inheritdoc cref="string.CompareOrdinal(string, string)"/>
    public static bool operator >(EntryId a, EntryId b) => a.CompareTo(b) > 0;

    /// <inheritdoc cref="string.CompareOrdinal(string, string)"/>
    public static bool operator <=(EntryId a, EntryId b) => a.CompareTo(b) <= 0;

    /// <inheritdoc cref="string.CompareOrdinal(string, string)"/>
    public static bool operator >=(EntryId a, EntryId b) => a.CompareTo(b) >= 0;
}
