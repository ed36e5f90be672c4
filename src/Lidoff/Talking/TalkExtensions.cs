using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Talking;

/// <summary>The shapes of docs/contracts.md that every command shares.</summary>
public static class TalkExtensions
{
    /// <summary>
    /// The error object in the place of one bad item among many: <c>{"format":1,"id":…,"error":{"where","expected","say"}}</c>.
    /// With several faults the first stands in <c>error</c> and all in <c>errors</c>, since none may be lost.
    /// </summary>
    public static void JsonFault(this ITalk talk, string? id, IReadOnlyList<Fault> faults) => talk.Json(json =>
    {
        if (id is null) json.WriteNull("id");
        else json.WriteString("id", id);
        json.WritePropertyName("error");
        Write(json, faults[0]);
        if (faults.Count < 2) return;
        json.WriteStartArray("errors");
        foreach (var fault in faults) Write(json, fault);
        json.WriteEndArray();
    });

    /// <summary>Every fault as a sentence for people.</summary>
    public static void SayFaults(this ITalk talk, IReadOnlyList<Fault> faults)
    {
        foreach (var fault in faults) talk.Say(fault.Say);
    }

    private static void Write(Utf8JsonWriter json, Fault fault)
    {
        json.WriteStartObject();
        json.WriteString("where", fault.Where);
        json.WriteString("expected", fault.Expected);
        json.WriteString("say", fault.Say);
        json.WriteEndObject();
    }
}
