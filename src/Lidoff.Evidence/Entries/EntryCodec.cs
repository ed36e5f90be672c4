using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>
/// The stored bytes of an entry: one JSON object in UTF-8, keys in fixed order, no white space. They are written once and
/// hashed; every later reader takes them as they lie. A later format may add keys, but keeps those that place an entry
/// (format, dossier, kind, chain, seq, previous, heads, targets, payload), so that this program can carry it along.
/// </summary>
public static class EntryCodec
{
    /// <summary>The format this program writes.</summary>
    public const int Format = 1;

    /// <summary>Largest header, in bytes; ten thousand heads still fit.</summary>
    public const int LargestHeader = 1 << 20;

    /// <summary>Largest payload, in bytes: a machine sighting with a few hundred thousand numbers still fits, larger things are files.</summary>
    public const int LargestPayload = 16 << 20;

    /// <summary>The key that holds a payload's salt. Keys with an underscore in front belong to the store.</summary>
    public const string SaltKey = "_salt";

    private const long LargestSeq = (1L << 53) - 1;

    /// <summary>SHA-256 in lower-case hex.</summary>
    public static string Hash(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    /// <summary>Gives a draft its place and writes its bytes. <paramref name="targets"/> are the draft's targets with batch places made into ids.</summary>
    public static StoredEntry Seal(
        EntryDraft draft, IReadOnlyList<EntryId> targets, string chain, long seq, EntryId? previous, IEnumerable<EntryId> heads, DateTimeOffset at, string salt)
    {
        Guard.NotNull(draft);
        var payload = Salted(draft.Payload.Span, salt);
        var entry = new Entry(
            default, draft.Dossier, draft.Kind, draft.KindVersion, chain, seq, previous, heads.Order().ToList(), targets.ToList(), Rounded(at), draft.By, Hash(payload))
        {
            Files = draft.Files.ToList(),
        };
        var bytes = Write(entry);
        return new(entry with { Id = new(Hash(bytes)) }, bytes, payload);
    }

    /// <summary>Reads stored bytes; the id is their hash. All faults at once.</summary>
    public static Outcome<Entry> Read(ReadOnlyMemory<byte> bytes)
    {
        if (bytes.Length > LargestHeader) return EntrySentences.HeaderTooLarge(bytes.Length);
        if (JsonLines.Refusal(bytes.Span) is { } refusal) return EntrySentences.BrokenHeader(refusal);
        using var document = JsonDocument.Parse(bytes);
        return Read(document.RootElement, new EntryId(Hash(bytes.Span)));
    }

    /// <summary>True when the payload's hash is the one its entry names.</summary>
    public static bool Belongs(Entry entry, ReadOnlySpan<byte> payload) =>
        string.Equals(Guard.NotNull(entry).PayloadHash, Hash(payload), StringComparison.Ordinal);

    private static byte[] Write(Entry entry)
    {
        var buffer = new ArrayBufferWriter<byte>(512);
        using (var json = new Utf8JsonWriter(buffer, EntryDraft.WriterOptions))
        {
            json.WriteStartObject();
            json.WriteNumber("format", entry.Format);
            WriteText(json, "dossier", entry.Dossier);
            json.WriteString("kind", entry.Kind);
            json.WriteNumber("kind_version", entry.KindVersion);
            json.WriteString("chain", entry.Chain);
            json.WriteNumber("seq", entry.Seq);
            WriteText(json, "previous", entry.Previous?.Hex ?? "");
            WriteTexts(json, "heads", entry.Heads.Select(h => h.Hex));
            WriteTexts(json, "targets", entry.Targets.Select(t => t.Hex));
            WriteTexts(json, "files", entry.Files);
            json.WriteString("at", entry.At.UtcDateTime.ToString("yyyy-MM-ddTHH:mm:ss.fffZ", CultureInfo.InvariantCulture));
            WriteText(json, "by", entry.By);
            json.WriteString("payload", entry.PayloadHash);
            json.WriteEndObject();
        }

        return buffer.WrittenSpan.ToArray();
    }

    private static void WriteText(Utf8JsonWriter json, string key, string text)
    {
        if (text.Length == 0) json.WriteNull(key);
        else json.WriteString(key, text);
    }

    private static void WriteTexts(Utf8JsonWriter json, string key, IEnumerable<string> texts)
    {
        json.WriteStartArray(key);
        foreach (var text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static Outcome<Entry> Read(JsonElement header, EntryId id)
    {
        var read = new PayloadReader(header);
        var format = (int)read.Whole("format", 1, int.MaxValue);
        var dossier = read.OptionalText("dossier") ?? "";
        var kind = read.Text("kind", 100);
        var kindVersion = (int)read.Whole("kind_version", 1, int.MaxValue);
        var chain = read.Text("chain", 100);
        var seq = read.Whole("seq", 1, LargestSeq);
        var previous = read.OptionalText("previous");
        var heads = read.Texts("heads");
        var targets = read.Texts("targets");
        var files = read.Texts("files");
        var at = format == Format ? read.Time("at") : read.OptionalTime("at") ?? default;
        var by = read.OptionalText("by") ?? "";
        var payload = read.Text("payload");

        if (!heads.Concat(targets).Concat(files).Append(payload).Append(previous ?? payload).All(EntryId.Fits)) read.Fail("previous, heads, targets, files, payload", "ids of 64 hex digits");
        if (seq == 1 != previous is null) read.Fail("previous", "missing in the first entry of a chain and there in every other");
        return read.Done(() => new Entry(
            id, dossier, kind, kindVersion, chain, seq, previous is null ? null : new EntryId(previous), Ids(heads), Ids(targets), at.ToUniversalTime(), by, payload)
        {
            Files = files,
            Format = format,
        });
    }

    private static List<EntryId> Ids(ValueList<string> texts) => texts.Select(t => new EntryId(t)).ToList();

    private static DateTimeOffset Rounded(DateTimeOffset at) => at.ToUniversalTime().AddTicks(-(at.Ticks % TimeSpan.TicksPerMillisecond));

    private static byte[] Salted(ReadOnlySpan<byte> payload, string salt)
    {
        Guard.That(payload.Length >= 2 && payload[0] == '{' && payload[^1] == '}', "a payload that is a bare JSON object");
        var rest = payload[1..];
        var front = Encoding.UTF8.GetBytes($"{{\"{SaltKey}\":\"{salt}\"" + (rest.Length > 1 ? "," : ""));
        return [.. front, .. rest];
    }
}
