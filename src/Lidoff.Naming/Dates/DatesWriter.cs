using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Dates;

/// <summary>Writes a result of date codes as one line of JSON, keys in the order of the contract.</summary>
public static class DatesWriter
{
    /// <summary>One object without a line end.</summary>
    public static string Write(DatesResult result)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteNumber("format", 1);
            WriteKeys(json, result);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    /// <summary>The keys behind <c>"format"</c> into an open object.</summary>
    public static void WriteKeys(Utf8JsonWriter json, DatesResult result)
    {
        Guard.NotNull(json).WriteStartArray("codes");
        foreach (var code in Guard.NotNull(result).Codes) WriteCode(json, code);
        json.WriteEndArray();
        WriteSpan(json, "window90", result.Window90);
        WriteQuarrel(json, result.Quarrel);
    }

    private static void WriteCode(Utf8JsonWriter json, DateCode code)
    {
        json.WriteStartObject();
        if (code.Fault is { } fault)
        {
            json.WriteNumber("format", 1);
            json.WriteString("id", code.Code);
            json.WriteStartObject("error");
            json.WriteString("where", fault.Where);
            json.WriteString("expected", fault.Expected);
            json.WriteString("say", fault.Say);
            json.WriteEndObject();
        }
        else
        {
            json.WriteString("code", code.Code);
            json.WriteStartArray("readings");
            foreach (var reading in code.Readings) WriteReading(json, reading);
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    private static void WriteReading(Utf8JsonWriter json, DateReading reading)
    {
        json.WriteStartObject();
        json.WriteString("from", reading.Weeks.From.ToString());
        json.WriteString("to", reading.Weeks.To.ToString());
        json.WriteString("rule", reading.Rule);
        json.WriteNumber("p", reading.P);
        json.WriteEndObject();
    }

    private static void WriteSpan(Utf8JsonWriter json, string key, WeekSpan? span)
    {
        if (span is not { } weeks)
        {
            json.WriteNull(key);
            return;
        }
        json.WriteStartObject(key);
        json.WriteString("from", weeks.From.ToString());
        json.WriteString("to", weeks.To.ToString());
        json.WriteEndObject();
    }

    private static void WriteQuarrel(Utf8JsonWriter json, DateQuarrel? quarrel)
    {
        if (quarrel is null)
        {
            json.WriteNull("quarrel");
            return;
        }
        json.WriteStartObject("quarrel");
        json.WriteStartArray("codes");
        foreach (var code in quarrel.Codes) json.WriteStringValue(code);
        json.WriteEndArray();
        json.WriteString("say", quarrel.Say);
        json.WriteEndObject();
    }
}
