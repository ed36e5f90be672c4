using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Telling.Dossiers;

/// <summary>What a dossier holds of machine readings, and the lines that add one: a reading made again takes the place of the one before, so that one mark counts once.</summary>
public static class StoredReadings
{
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Live readings of a spot of a specimen, in fold order.</summary>
    public static IReadOnlyList<Sighting<ReadingSighting>> Of(IDossierView view, string spot, string specimen) =>
        [.. Guard.NotNull(view).Live<ReadingSighting>().Where(each => each.Value.Spot == spot && each.Specimen == specimen)];

    /// <summary>The live reading that says the same, whichever version of the program made it; null where there is none.</summary>
    public static Sighting<ReadingSighting>? Same(IDossierView view, string specimen, ReadingSighting reading) =>
        Of(view, Guard.NotNull(reading).Spot, specimen).LastOrDefault(each => (each.Value with { Program = reading.Program }).Equals(reading));

    /// <summary>Every reading that was ever stored, also where it was taken back since, by spot and specimen.</summary>
    public static ILookup<(string Spot, string Specimen), ReadingSighting> Ever(IDossierView view) =>
        Guard.NotNull(view).Entries.Where(each => each.Entry.Kind == ReadingKind.Word && each.Payload is not null).Select(each => Read(each.Payload!.Value))
            .OfType<(string Specimen, ReadingSighting Reading)>().ToLookup(each => (each.Reading.Spot, each.Specimen), each => each.Reading);

    /// <summary>Whether one of the readings of a mark was made by these networks and looked at every picture that shows it now: nothing is read again in silence.</summary>
    public static bool Cover(IEnumerable<ReadingSighting> ever, SpotToRead mark, IReadOnlyList<string> networks) =>
        Guard.NotNull(ever).Any(read => read.Networks.SequenceEqual(networks) && Guard.NotNull(mark).Pictures.All(picture => read.Pictures.Contains(picture.Sha256) || read.Besides.Contains(picture.Sha256)));

    /// <summary>The lines of <c>note</c> that store a reading in the place of those there are, and of what is remembered of having read nothing.</summary>
    public static ReadOnlyMemory<byte> Lines(IDossierView view, string specimen, ReadingSighting reading)
    {
        var before = Of(view, Guard.NotNull(reading).Spot, specimen).Select(each => each.Id).Concat(StoredUnread.Of(view, reading.Spot, specimen).Select(each => each.Id));
        return Lines(ReadingKind.Word, specimen, json => ReadingKind.WriteKeys(json, reading), before);
    }

    /// <summary>A line of a kind, and those that put it in the place of others.</summary>
    internal static ReadOnlyMemory<byte> Lines(string kind, string specimen, Action<Utf8JsonWriter> keys, IEnumerable<EntryId> before)
    {
        var buffer = new ArrayBufferWriter<byte>();
        Write(buffer, json =>
        {
            json.WriteString("kind", kind);
            if (specimen.Length > 0) json.WriteString("specimen", specimen);
            keys(json);
        });
        foreach (var target in before)
        {
            Write(buffer, json =>
            {
                json.WriteString("kind", ControlKinds.Supersede);
                json.WriteString("target", target.Hex);
                json.WriteNumber("by_line", 1);
            });
        }

        return buffer.WrittenMemory;
    }

    private static (string Specimen, ReadingSighting Reading)? Read(ReadOnlyMemory<byte> payload)
    {
        using var json = JsonDocument.Parse(payload);
        if (!new ReadingKind().Read(json.RootElement, 1).TryValue(out var reading)) return null;
        return (json.RootElement.TryGetProperty("specimen", out var specimen) && specimen.ValueKind == JsonValueKind.String ? specimen.GetString()! : "", reading);
    }

    private static void Write(ArrayBufferWriter<byte> buffer, Action<Utf8JsonWriter> keys)
    {
        using (var json = new Utf8JsonWriter(buffer, Plain))
        {
            json.WriteStartObject();
            keys(json);
            json.WriteEndObject();
        }

        buffer.Write("\n"u8);
    }
}
