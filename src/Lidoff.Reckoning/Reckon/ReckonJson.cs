using System.Globalization;
using System.Text.Json;
using Lidoff.Numbers.Failing;
using Lidoff.Reckoning.References;

namespace Lidoff.Reckoning.Reckon;

/// <summary>Writes results and the list as <c>docs/contracts.md</c> has them; the caller opens and closes the object and writes <c>format</c>.</summary>
public static class ReckonJson
{
    /// <summary>The keys of one result, values in the calculation's own unit.</summary>
    public static void Write(Utf8JsonWriter json, ReckonResult result)
    {
        Guard.NotNull(json);
        Guard.NotNull(result);
        var (info, value) = (result.Info, result.Value);
        var unit = info.Unit;
        json.WriteString("name", info.Name);
        json.WriteNumber("value", unit.FromSi(value.Value));
        json.WriteString("unit", unit.Symbol);
        json.WriteNumber("u", unit.SpanFromSi(value.U));
        json.WriteStartArray("interval90");
        json.WriteNumberValue(unit.FromSi(value.Interval90.Low));
        json.WriteNumberValue(unit.FromSi(value.Interval90.High));
        json.WriteEndArray();
        json.WriteNumber("median", unit.FromSi(value.Median));
        json.WriteNumber("first_order_u", unit.SpanFromSi(value.FirstOrderU));
        json.WriteStartArray("shares");
        // The largest first, so that a reader sees at once what to measure better.
        foreach (var share in value.Shares.Where(share => share.Share != 0).OrderByDescending(share => share.Share).ThenBy(share => share.Input, StringComparer.Ordinal))
        {
            json.WriteStartObject();
            json.WriteString("input", share.Input);
            json.WriteNumber("share", share.Share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("inputs");
        foreach (var input in result.Inputs) Input(json, input);
        json.WriteEndObject();
        json.WriteString("source", info.Source);
        json.WriteString("maturity", Word(info.Maturity));
        json.WriteStartArray("cautions");
        foreach (var caution in result.Cautions) json.WriteStringValue(caution);
        json.WriteEndArray();
    }

    /// <summary>The keys of one line of the list.</summary>
    public static void WriteListed(Utf8JsonWriter json, CalculationInfo info)
    {
        Guard.NotNull(json);
        Guard.NotNull(info);
        json.WriteString("name", info.Name);
        json.WriteString("says", info.Says);
        json.WriteStartArray("inputs");
        foreach (var input in info.Inputs)
        {
            json.WriteStartObject();
            json.WriteString("key", input.Key);
            json.WriteString("unit", input.Unit.Symbol);
            json.WriteStartArray("range");
            json.WriteNumberValue(Plain(input.Unit.FromSi(input.Least)));
            json.WriteNumberValue(Plain(input.Unit.FromSi(input.Most)));
            json.WriteEndArray();
            json.WriteString("says", input.Says);
            if (input.Default is { } assumed) json.WriteNumber("default", Plain(input.Unit.FromSi(assumed)));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("unit", info.Unit.Symbol);
        json.WriteString("source", info.Source);
        json.WriteString("maturity", Word(info.Maturity));
        json.WriteNumber("checks", ReferenceTable.Count(info.Name));
    }

    /// <summary>The word for a maturity.</summary>
    public static string Word(Maturity maturity) => maturity switch
    {
        Maturity.Experimental => "experimental",
        Maturity.Checked => "checked",
        _ => "validated",
    };

    private static void Input(Utf8JsonWriter json, ReckonedInput input)
    {
        var unit = input.Input.Unit;
        json.WriteStartObject(input.Input.Key);
        json.WriteNumber("value", unit.FromSi(input.Value.Value));
        json.WriteString("unit", unit.Symbol);
        json.WriteNumber("u", unit.SpanFromSi(input.Value.U));
        if (input.Assumed) json.WriteBoolean("assumed", true);
        else json.WriteString("given", input.Given);
        json.WriteEndObject();
    }

    // Ranges are written down in the unit and kept in SI; the way back may miss the last digit.
    private static double Plain(double value) =>
        double.Parse(value.ToString("G12", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);
}
