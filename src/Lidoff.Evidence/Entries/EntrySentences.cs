using System.Globalization;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>What a person reads about entries that cannot be read, or lines of <c>note</c> that cannot be taken.</summary>
public static class EntrySentences
{
    /// <summary>A header beyond the size that is read.</summary>
    public static Fault HeaderTooLarge(long bytes) => new(
        "entry", "an entry header of 1 MiB at most", string.Create(CultureInfo.InvariantCulture, $"An entry header has {bytes} bytes; more than 1 MiB is not read."));

    /// <summary>A header that is no JSON.</summary>
    public static Fault BrokenHeader(JsonException broken) => new(
        "entry", "one JSON object in UTF-8", $"An entry header cannot be read{Place(broken)}.");

    /// <summary>A payload that is no JSON.</summary>
    public static Fault PayloadBroken(EntryId id, JsonException broken) => new(
        id.Hex, "one JSON object in UTF-8", $"The content of entry {id.Hex[..12]} cannot be read{Place(broken)}.");

    /// <summary>A payload that is not there though nobody erased it.</summary>
    public static Fault PayloadGone(EntryId id) => new(
        id.Hex, "the content that was stored", $"The content of entry {id.Hex[..12]} is missing though nobody erased it.");

    internal static string Place(JsonException broken) => broken.BytePositionInLine is { } at
        ? string.Create(CultureInfo.InvariantCulture, $" (byte {at + 1})")
        : "";
}
