using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Lidoff.Reckoning.Reckon;

namespace Lidoff.Reckoning.Tests;

public sealed class ReckonJsonTests
{
    [Fact]
    public void A_result_has_the_keys_of_the_contracts_in_their_order_and_numbers_in_the_unit()
    {
        var result = new Reckoner(new NoColumns()).Reckon(new("regulator_efficiency", [new("input_voltage", "4 V"), new("output_voltage", "2 V")])).Value;
        Assert.Equal(
            """
            {"name":"regulator_efficiency","value":50,"unit":"%","u":0,"interval90":[50,50],"median":50,"first_order_u":0,"shares":[],"inputs":{"input_voltage":{"value":4,"unit":"V","u":0,"given":"4 V"},"output_voltage":{"value":2,"unit":"V","u":0,"given":"2 V"},"load_current":{"value":1,"unit":"mA","u":0,"assumed":true},"quiescent_current":{"value":0,"unit":"µA","u":0,"assumed":true}},"source":"Power out over power in: the load current passes the whole regulator","maturity":"checked","cautions":["An output near the input drops out: then the output follows the input down.","Not given, so assumed: load_current 1 mA, quiescent_current 0 µA."]}
            """,
            Json(json => ReckonJson.Write(json, result)));
    }

    [Fact]
    public void Shares_come_largest_first()
    {
        var result = new Reckoner(new NoColumns()).Reckon(new("energy_from_capacity", [new("capacity", "100±1"), new("voltage", "3.7±0.2")])).Value;
        using var document = JsonDocument.Parse(Json(json => ReckonJson.Write(json, result)));
        var shares = document.RootElement.GetProperty("shares").EnumerateArray().ToList();
        Assert.Equal(["voltage", "capacity"], shares.Select(share => share.GetProperty("input").GetString()));
        // Relative: 1 % against 5.405 %.
        Assert.Equal(0.967, shares[0].GetProperty("share").GetDouble(), 0.001);
    }

    [Fact]
    public void A_line_of_the_list_has_the_keys_of_the_contracts()
    {
        using var document = JsonDocument.Parse(Json(json => ReckonJson.WriteListed(json, Calculations.Find("i2c_pullup_least")!.Info)));
        Assert.Equal(["name", "says", "inputs", "unit", "source", "maturity", "checks"], document.RootElement.EnumerateObject().Select(each => each.Name));
        var input = document.RootElement.GetProperty("inputs")[0];
        Assert.Equal("""{"key":"supply","unit":"V","range":[0.8,6],"says":"supply of the bus"}""", input.GetRawText());
        Assert.Equal(3, document.RootElement.GetProperty("checks").GetInt32());
    }

    private static string Json(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
