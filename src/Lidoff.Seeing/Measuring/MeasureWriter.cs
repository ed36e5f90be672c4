using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>Writes measured targets as docs/contracts.md lays them down: keys in fixed order, a bad target's error in its place.</summary>
public static class MeasureWriter
{
    /// <summary>Writes the <c>"targets"</c> list into the object that the caller has begun.</summary>
    public static void Write(Utf8JsonWriter json, IReadOnlyList<MeasuredTarget> targets)
    {
        json.WriteStartArray("targets");
        foreach (var target in targets)
        {
            json.WriteStartObject();
            if (target.Length.TryValue(out var length)) Length(json, length);
            else Faults(json, target.Id, target.Length.Faults);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Length(Utf8JsonWriter json, MeasuredLength length)
    {
        json.WriteString("id", length.Id);
        json.WriteNumber("value_mm", length.ValueMm);
        json.WriteNumber("u_mm", length.UMm);
        json.WriteStartArray("interval90_mm");
        json.WriteNumberValue(length.LowMm);
        json.WriteNumberValue(length.HighMm);
        json.WriteEndArray();
        if (length.Snap is null)
        {
            json.WriteNull("snap");
        }
        else
        {
            json.WriteStartObject("snap");
            json.WriteNumber("mm", length.Snap.Mm);
            json.WriteString("kind", length.Snap.Kind);
            json.WriteNumber("likelihood_ratio", length.Snap.LikelihoodRatio);
            json.WriteEndObject();
        }

        json.WriteStartArray("warnings");
        foreach (var warning in length.Warnings)
        {
            json.WriteStartObject();
            json.WriteString("code", warning.Code);
            json.WriteString("say", warning.Say);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Faults(Utf8JsonWriter json, string id, IReadOnlyList<Fault> faults)
    {
        json.WriteNumber("format", 1);
        json.WriteString("id", id);
        json.WritePropertyName("error");
        One(json, faults[0]);
        if (faults.Count < 2) return;
        json.WriteStartArray("errors");
        foreach (var fault in faults) One(json, fault);
        json.WriteEndArray();
    }

    private static void One(Utf8JsonWriter json, Fault fault)
    {
        json.WriteStartObject();
        json.WriteString("where", fault.Where);
        json.WriteString("expected", fault.Expected);
        json.WriteString("say", fault.Say);
        json.WriteEndObject();
    }
}
