using System.Text;
using System.Text.Json;

namespace Lidoff.Numbers.Failing;

/// <summary>
/// JSON from outside as docs/contracts.md wants it: UTF-8, no duplicate keys, no NaN and no infinities. Everything that is refused is
/// named with line and place, and all of it at once.
/// </summary>
public static class StrictJson
{
    private static readonly string[] NotNumbers = ["-Infinity", "+Infinity", "Infinity", "-NaN", "NaN"];

    /// <summary>
    /// Parses one value. <paramref name="firstLine"/> is the number of its first line, for files with one value a line.
    /// The element is a copy and lives as long as it is held.
    /// </summary>
    public static Outcome<JsonElement> Parse(ReadOnlySpan<byte> utf8, int firstLine = 1)
    {
        if (utf8.StartsWith("\uFEFF"u8)) utf8 = utf8[3..];
        var faults = new List<(long Line, long Column, Fault Fault)>();
        var bytes = utf8.ToArray();
        BlankNotNumbers(bytes, firstLine, faults);
        try
        {
            FindRepeatedAndEndless(bytes, firstLine, faults);
            if (faults.Count > 0) return Refused(faults);
            using var document = JsonDocument.Parse(bytes);
            return document.RootElement.Clone();
        }
        catch (JsonException failure)
        {
            var (line, column) = (firstLine + (failure.LineNumber ?? 0), (failure.BytePositionInLine ?? 0) + 1);
            faults.Add((line, column, StrictJsonSentences.NotJson(line, column)));
            return Refused(faults);
        }
    }

    private static Outcome<JsonElement> Refused(List<(long Line, long Column, Fault Fault)> faults) =>
        Outcome<JsonElement>.Failed([.. faults.OrderBy(fault => fault.Line).ThenBy(fault => fault.Column).Select(fault => fault.Fault)]);

    /// <summary>Replaces bare words that other programs write for "no number" by blanks and a null, so that reading can go on.</summary>
    private static void BlankNotNumbers(byte[] bytes, int firstLine, List<(long Line, long Column, Fault Fault)> faults)
    {
        var (line, lineStart, inText) = (firstLine, 0, false);
        for (var i = 0; i < bytes.Length; i++)
        {
            if (bytes[i] == '\n') (line, lineStart) = (line + 1, i + 1);
            if (inText)
            {
                if (bytes[i] == '\\') i++;
                else if (bytes[i] == '"') inText = false;
                continue;
            }

            if (bytes[i] == '"') inText = true;
            foreach (var word in NotNumbers)
            {
                if (!bytes.AsSpan(i).StartsWith(Encoding.ASCII.GetBytes(word))) continue;
                faults.Add((line, i - lineStart + 1, StrictJsonSentences.NotFinite(line, i - lineStart + 1, word)));
                // A lone zero padded with blanks reads as a number of any kind; "NaN" has three letters, so it always fits.
                bytes.AsSpan(i, word.Length).Fill((byte)' ');
                bytes[i] = (byte)'0';
                i += word.Length - 1;
                break;
            }
        }
    }

    private static void FindRepeatedAndEndless(byte[] bytes, int firstLine, List<(long Line, long Column, Fault Fault)> faults)
    {
        var reader = new Utf8JsonReader(bytes);
        var keys = new Stack<HashSet<string>>();
        while (reader.Read())
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.StartObject:
                    keys.Push(new(StringComparer.Ordinal));
                    break;
                case JsonTokenType.EndObject:
                    keys.Pop();
                    break;
                case JsonTokenType.PropertyName when !keys.Peek().Add(reader.GetString()!):
                    var (line, column) = Place(bytes, reader.TokenStartIndex, firstLine);
                    faults.Add((line, column, StrictJsonSentences.Repeated(line, column, reader.GetString()!)));
                    break;
                case JsonTokenType.Number when !reader.TryGetDouble(out var value) || !double.IsFinite(value):
                    (line, column) = Place(bytes, reader.TokenStartIndex, firstLine);
                    faults.Add((line, column, StrictJsonSentences.NotFinite(line, column, Encoding.ASCII.GetString(reader.ValueSpan))));
                    break;
                default:
                    break;
            }
        }
    }

    private static (int Line, int Column) Place(byte[] bytes, long index, int firstLine)
    {
        var before = bytes.AsSpan(0, (int)index);
        return (firstLine + before.Count((byte)'\n'), (int)index - before.LastIndexOf((byte)'\n'));
    }
}
