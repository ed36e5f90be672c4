using System.Text;
using System.Text.Json;
using Lidoff.Catalogue.Tables;

namespace Lidoff.Catalogue.Importing;

/// <summary>Reads one JSON object a line. Values are texts or numbers; a list of them is joined with blanks (addresses).</summary>
internal static class JsonRows
{
    private static readonly JsonReaderOptions Shallow = new() { MaxDepth = 4 };

    public static void Read(string text, Gathering into)
    {
        var unknown = new SortedSet<string>(StringComparer.Ordinal);
        var reader = new RowReader(into.FileName, decimalComma: false);
        var line = 0;
        foreach (var raw in text.AsSpan().EnumerateLines())
        {
            line++;
            if (raw.IsWhiteSpace()) continue;
            if (into.Full)
            {
                into.AddTooMany();
                break;
            }

            if (raw.Length > ImportLimits.LineLength)
            {
                into.Add(CatalogueSentences.LongLine(line, ImportLimits.LineLength));
                continue;
            }

            if (into.Doubled(line, raw.Trim().ToString())) continue;
            if (Cells(raw, line, into, unknown) is { } cells) into.Add(reader.Read(line, name => cells.GetValueOrDefault(name, "")));
        }

        foreach (var name in unknown) into.Note(CatalogueSentences.UnknownColumn(into.FileName, name));
    }

    private static Dictionary<string, string>? Cells(ReadOnlySpan<char> raw, int line, Gathering into, SortedSet<string> unknown)
    {
        var cells = new Dictionary<string, string>(StringComparer.Ordinal);
        var sound = true;
        try
        {
            var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(raw.ToArray()), Shallow);
            if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
            {
                into.Add(CatalogueSentences.BadJson(line, "it does not start with a brace."));
                return null;
            }

            while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
            {
                var name = reader.GetString()!;
                reader.Read();
                var value = Value(ref reader);
                if (!Columns.Has(name))
                {
                    unknown.Add(name);
                    continue;
                }

                if (value is null) into.Add(CatalogueSentences.BadValue(line, name));
                else if (!cells.TryAdd(name, value)) into.Add(CatalogueSentences.DoubledKey(line, name));
                else continue;
                sound = false;
            }

            if (reader.Read())
            {
                into.Add(CatalogueSentences.BadJson(line, "something follows it."));
                return null;
            }
        }
        catch (JsonException e)
        {
            into.Add(CatalogueSentences.BadJson(line, FormattableString.Invariant($"it breaks off at byte {(e.BytePositionInLine ?? 0) + 1}.")));
            return null;
        }

        return sound ? cells : null;
    }

    // The text of a value, null when it is an object, a truth value or a list of such.
    private static string? Value(ref Utf8JsonReader reader)
    {
        switch (reader.TokenType)
        {
            case JsonTokenType.Null: return "";
            case JsonTokenType.String: return reader.GetString();
            case JsonTokenType.Number: return Encoding.UTF8.GetString(reader.ValueSpan);
            case JsonTokenType.StartArray:
                var items = new List<string>();
                var sound = true;
                while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
                {
                    if (Value(ref reader) is { } item) items.Add(item);
                    else sound = false;
                }

                return sound ? string.Join(' ', items) : null;
            default:
                reader.Skip();
                return null;
        }
    }
}
