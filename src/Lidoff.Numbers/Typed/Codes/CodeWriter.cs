using System.Text.Json;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed.Codes.Bands;

namespace Lidoff.Numbers.Typed.Codes;

/// <summary>Writes readings of value codes and colour bands as docs/contracts.md lays them down.</summary>
public static class CodeWriter
{
    // Beyond that the shares they rest on say nothing.
    private const int Digits = 4;

    /// <summary>Writes <c>"readings"</c> and <c>"none_p"</c> of a code into the object that the caller has begun.</summary>
    public static void WriteKeys(Utf8JsonWriter json, CodeOdds odds)
    {
        Guard.NotNull(json).WriteStartArray("readings");
        foreach (var code in Guard.NotNull(odds).Readings)
        {
            Open(json, code.Reading);
            json.WriteString("as", code.As);
            json.WriteBoolean("on_head", code.OnHead);
            Close(json, code.P);
        }

        json.WriteEndArray();
        json.WriteNumber("none_p", Math.Round(odds.NoneP, Digits));
    }

    /// <summary>The same of colour bands.</summary>
    public static void WriteKeys(Utf8JsonWriter json, BandOdds odds)
    {
        Guard.NotNull(json).WriteStartArray("readings");
        foreach (var bands in Guard.NotNull(odds).Readings)
        {
            Open(json, bands.Reading);
            json.WriteStartArray("bands");
            foreach (var colour in bands.Colours) json.WriteStringValue(TypedBands.Name(colour));
            json.WriteEndArray();
            json.WriteBoolean("from_end", bands.FromEnd);
            Close(json, bands.P);
        }

        json.WriteEndArray();
        json.WriteNumber("none_p", Math.Round(odds.NoneP, Digits));
    }

    private static void Open(Utf8JsonWriter json, CodeReading reading)
    {
        json.WriteStartObject();
        json.WriteNumber("value", reading.Si);
        json.WriteString("unit", reading.Unit.Symbol);
        json.WriteString("sort", reading.Sort.ToString().ToLowerInvariant());
        json.WriteString("rule", reading.Rule);
        // A code without a tolerance says nothing of it, and a letter may mean more than one.
        if (reading.Tolerances.Count > 0)
        {
            json.WriteStartArray("tolerances");
            foreach (var tolerance in reading.Tolerances)
            {
                json.WriteStartObject();
                json.WriteNumber("below", tolerance.Below);
                json.WriteNumber("above", tolerance.Above);
                json.WriteString("unit", tolerance.Unit.Symbol);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        if (reading.RatedVolts is { } volts) json.WriteNumber("rated_v", volts);
        if (reading.DriftPpm is { } ppm) json.WriteNumber("drift_ppm_per_k", ppm);
    }

    private static void Close(Utf8JsonWriter json, double p)
    {
        json.WriteNumber("p", Math.Round(p, Digits));
        json.WriteEndObject();
    }
}
