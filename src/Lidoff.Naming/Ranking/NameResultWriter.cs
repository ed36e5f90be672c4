using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Ranking;

/// <summary>Writes a belief, or the fault of a line, as one line of JSON, keys in the order of the contract.</summary>
public static class NameResultWriter
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One object without a line end.</summary>
    public static string Write(string id, LocalBelief belief)
    {
        return Object(json =>
        {
            json.WriteNumber("format", 1);
            WriteKeys(json, id, belief);
        });
    }

    /// <summary>The keys behind <c>"format"</c> into an open object.</summary>
    public static void WriteKeys(Utf8JsonWriter json, string id, LocalBelief belief)
    {
        Guard.NotNull(json).WriteString("id", id);
        json.WriteStartArray("candidates");
        foreach (var candidate in Guard.NotNull(belief).Candidates) WriteCandidate(json, candidate);
        json.WriteEndArray();
        json.WriteNumber("others_p", belief.OthersP);
        WriteFamily(json, belief.Family);
        json.WriteNumber("none_p", belief.NoneP);
        json.WriteString("level", belief.Level switch { NameLevel.Part => "part", NameLevel.Family => "family", _ => "none" });
        json.WriteStartArray("next");
        foreach (var next in belief.Next) WriteNext(json, next);
        json.WriteEndArray();
    }

    private static string Object(Action<Utf8JsonWriter> fill)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            fill(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void WriteCandidate(Utf8JsonWriter json, Candidate candidate)
    {
        json.WriteStartObject();
        json.WriteString("part", candidate.Part.Name);
        json.WriteStartArray("order_codes");
        foreach (var code in candidate.OrderCodes) json.WriteStringValue(code);
        json.WriteEndArray();
        json.WriteString("maker", candidate.Part.Maker);
        json.WriteString("class", candidate.Part.Class);
        json.WriteNumber("p", candidate.P);
        json.WriteStartArray("because");
        foreach (var because in candidate.Because)
        {
            json.WriteStartObject();
            json.WriteString("evidence", because.Evidence);
            json.WriteNumber("db", because.Db);
            json.WriteString("say", because.Say);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteFamily(Utf8JsonWriter json, FamilyBelief? family)
    {
        if (family is null)
        {
            json.WriteNull("family");
            return;
        }
        json.WriteStartObject("family");
        json.WriteString("name", family.Name);
        json.WriteNumber("p", family.P);
        json.WriteNumber("members", family.Members);
        json.WriteEndObject();
    }

    private static void WriteNext(Utf8JsonWriter json, NextMeasure next)
    {
        json.WriteStartObject();
        json.WriteString("measure", next.Measure);
        json.WriteNumber("bits", next.Bits);
        json.WriteNumber("minutes", next.Minutes);
        json.WriteString("risk", next.Risk);
        json.WriteEndObject();
    }
}
