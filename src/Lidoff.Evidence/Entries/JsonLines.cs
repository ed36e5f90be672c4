using System.Text.Json;
using System.Text.Unicode;
using Lidoff.Numbers.Failing;

namespace Lidoff.Evidence.Entries;

/// <summary>
/// Reads inputs of one JSON object a line, or one object in all, by the rules that hold everywhere: UTF-8; no key twice; no
/// NaN and no infinity, however written. What is refused is named with line and byte.
/// </summary>
public static class JsonLines
{
    /// <summary>Largest input that is read, in bytes. A larger one is a file to add, not lines to take.</summary>
    public const int LargestInput = 256 << 20;

    internal const int Depth = 64;

    /// <summary>Reads all of a stream. A fault means that the input as a whole is refused.</summary>
    public static Outcome<byte[]> Take(Stream input)
    {
        using var all = new MemoryStream();
        var buffer = new byte[1 << 16];
        int read;
        while ((read = Guard.NotNull(input).Read(buffer)) > 0)
        {
            if (all.Length + read > LargestInput) return EntrySentences.InputTooLarge;
            all.Write(buffer, 0, read);
        }

        var bytes = all.ToArray();
        if (bytes is [0xFE, 0xFF, ..] or [0xFF, 0xFE, ..]) return EntrySentences.NotUtf8;
        return bytes is [0xEF, 0xBB, 0xBF, ..] ? bytes[3..] : bytes;
    }

    /// <summary>The lines of an input; a bad one does not keep the others from being read.</summary>
    public static IReadOnlyList<JsonLine> Split(ReadOnlyMemory<byte> input)
    {
        var lines = new List<JsonLine>();
        for (var number = 1; input.Length > 0; number++)
        {
            var end = input.Span.IndexOf((byte)'\n');
            var line = end < 0 ? input : input[..end];
            input = end < 0 ? default : input[(end + 1)..];
            if (!IsBlank(line.Span)) lines.Add(new(number, Parse(line, number)));
        }

        return lines;
    }

    /// <summary>Reads one line that stands alone; <paramref name="number"/> is what it is called in sentences.</summary>
    public static JsonLine Line(string line, int number) => new(number, Parse(System.Text.Encoding.UTF8.GetBytes(line), number));

    /// <summary>Reads one object that may be spread over several lines.</summary>
    public static Outcome<JsonElement> One(ReadOnlyMemory<byte> input) => Parse(input, 1);

    /// <summary>What keeps stored bytes from being read; null when nothing does.</summary>
    internal static Fault? Refusal(ReadOnlySpan<byte> text) => Flaw(text, 1);

    /// <param name="text">One JSON value.</param>
    /// <param name="line">Number of its first line in the input.</param>
    private static Outcome<JsonElement> Parse(ReadOnlyMemory<byte> text, int line)
    {
        if (text.Length > EntryCodec.LargestPayload) return EntrySentences.LineTooLarge(line);
        if (Flaw(text.Span, line) is { } flaw) return flaw;
        using var document = JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = Depth });
        return document.RootElement.ValueKind == JsonValueKind.Object ? document.RootElement.Clone() : EntrySentences.NoObject(line);
    }

    private static bool IsBlank(ReadOnlySpan<byte> line) => line.IndexOfAnyExcept(" \t\r"u8) < 0;

    /// <summary>The first thing that keeps the text from being strict JSON; null when there is none.</summary>
    private static Fault? Flaw(ReadOnlySpan<byte> text, int line)
    {
        var reader = new Utf8JsonReader(text, new JsonReaderOptions { MaxDepth = Depth });
        var keys = new Stack<HashSet<string>>();
        try
        {
            while (reader.Read())
            {
                var place = Place(text, (int)reader.TokenStartIndex, line);
                switch (reader.TokenType)
                {
                    case JsonTokenType.StartObject:
                        keys.Push(new(StringComparer.Ordinal));
                        break;
                    case JsonTokenType.EndObject:
                        keys.Pop();
                        break;
                    case JsonTokenType.PropertyName when TextOf(ref reader) is not { } key:
                        return EntrySentences.BrokenText(place);
                    case JsonTokenType.PropertyName:
                        if (!keys.Peek().Add(reader.GetString()!)) return EntrySentences.KeyTwice(place, reader.GetString()!);
                        break;
                    case JsonTokenType.String when TextOf(ref reader) is null:
                        return EntrySentences.BrokenText(place);
                    case JsonTokenType.Number when !reader.TryGetDouble(out var number) || !double.IsFinite(number):
                        return EntrySentences.NotFinite(place);
                }
            }

            return null;
        }
        catch (JsonException broken)
        {
            return Broken(text, broken, line);
        }
    }

    private static string? TextOf(ref Utf8JsonReader reader)
    {
        if (!Utf8.IsValid(reader.ValueSpan)) return null;
        try
        {
            return reader.GetString();
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair, written as an escape.
            return null;
        }
    }

    private static Fault Broken(ReadOnlySpan<byte> text, JsonException broken, int line)
    {
        var inLine = (int)(broken.BytePositionInLine ?? 0);
        var start = 0;
        for (var skip = broken.LineNumber ?? 0; skip > 0; skip--) start += text[start..].IndexOf((byte)'\n') + 1;
        var at = Math.Min(start + inLine, text.Length);

        // The reader stops within the word; it is one of these three when it begins like them.
        var word = at;
        while (word > 0 && (char.IsAsciiLetter((char)text[word - 1]) || text[word - 1] == '-')) word--;
        var rest = text[word..];
        var place = Place(text, at, line);
        return rest.StartsWith("NaN"u8) || rest.StartsWith("Infinity"u8) || rest.StartsWith("-Infinity"u8)
            ? EntrySentences.NotFinite(Place(text, word, line))
            : EntrySentences.NotJson(place);
    }

    private static (int Line, int Byte) Place(ReadOnlySpan<byte> text, int at, int firstLine)
    {
        var before = text[..at];
        return (firstLine + before.Count((byte)'\n'), at - before.LastIndexOf((byte)'\n'));
    }
}
