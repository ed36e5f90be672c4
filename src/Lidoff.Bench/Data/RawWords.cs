using System.Globalization;
using System.Text.Json;
using Lidoff.Evidence.Folding;
using Lidoff.Weighing.Becauses;

namespace Lidoff.Bench.Data;

/// <summary>Words for an entry that no longer counts or has no sentence of its own: its short values as they were written.</summary>
internal static class RawWords
{
    // Longer values are hashes and the like: they say nothing in a line.
    private const int MostCharacters = 60;
    private const int MostValues = 6;

    /// <summary>"spot U1, role radio"; for an entry that took others back what those were.</summary>
    public static string Of(FoldedEntry folded, IDossierView view)
    {
        var taken = view.Entries.Where(other => other.By.Contains(folded.Entry.Id)).Select(other => other.Entry.Kind).Distinct(StringComparer.Ordinal).ToList();
        if (taken.Count > 0) return Did(folded.Entry.Kind) + " " + string.Join(", ", taken) + ".";
        if (folded.Payload is not { } payload) return EntryWords.AsWritten;
        try
        {
            using var json = JsonDocument.Parse(payload);
            if (json.RootElement.ValueKind != JsonValueKind.Object) return EntryWords.AsWritten;
            var said = json.RootElement.EnumerateObject().Where(each => each.Name != "kind" && each.Name[0] != '_').Select(Said).OfType<string>().Take(MostValues);
            return string.Join(", ", said) is { Length: > 0 } words ? words + "." : EntryWords.AsWritten;
        }
        catch (JsonException)
        {
            return EntryWords.AsWritten;
        }
    }

    private static string Did(string kind) => kind switch
    {
        "supersede" => "written anew:",
        "undo" => "taken back:",
        "erase" => "erased by right:",
        _ => kind + " of",
    };

    // A list says how much it holds.
    private static string? Said(JsonProperty each) => each.Value.ValueKind == JsonValueKind.Array
        ? string.Create(CultureInfo.InvariantCulture, $"{each.Value.GetArrayLength()} {each.Name}")
        : each.Value.ValueKind is JsonValueKind.True or JsonValueKind.False ? (each.Value.ValueKind == JsonValueKind.True ? each.Name : "not " + each.Name)
        : Short(each.Value) ? $"{each.Name} {each.Value}" : null;

    private static bool Short(JsonElement value) =>
        value.ValueKind == JsonValueKind.Number || (value.ValueKind == JsonValueKind.String && value.GetString() is { Length: > 0 and <= MostCharacters });
}
