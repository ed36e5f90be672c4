using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring;

/// <summary>
/// Reads the keys of one JSON object. What is wrong goes to the list of faults and a harmless value comes back, so that every
/// fault of an input is found in one pass.
/// </summary>
internal sealed class JsonFields
{
    private readonly string place;
    private readonly JsonElement item;
    private readonly List<Fault> faults;
    private readonly bool isObject;

    public JsonFields(string place, JsonElement item, List<Fault> faults, List<string> unknown, IReadOnlyList<string> known)
    {
        (this.place, this.item, this.faults) = (place, item, faults);
        isObject = item.ValueKind == JsonValueKind.Object;
        if (!isObject)
        {
            faults.Add(new(place, "an object", SeeingSentences.Wrong(place, item.GetRawText(), "an object")));
            return;
        }

        foreach (var property in item.EnumerateObject())
        {
            if (!known.Contains(property.Name)) unknown.Add(Where(property.Name));
        }
    }

    /// <summary>A text that must be there and not be empty.</summary>
    public string Text(string key, string expected)
    {
        if (!TryGet(key, out var value)) return Missing(key, expected, "");
        return value.ValueKind == JsonValueKind.String && value.GetString()!.Length > 0 ? value.GetString()! : Wrong(key, value, expected, "");
    }

    /// <summary>A number that must be there, unless <paramref name="fallback"/> is given.</summary>
    public double Number(string key, string expected, Func<double, bool> fits, double? fallback = null)
    {
        if (!TryGet(key, out var value)) return fallback ?? Missing(key, expected, 1);
        return IsNumber(value, out var number) && fits(number) ? number : Wrong(key, value, expected, 1);
    }

    /// <summary>A number that may be missing or null.</summary>
    public double? Optional(string key, string expected, Func<double, bool> fits)
    {
        if (!TryGet(key, out var value)) return null;
        return IsNumber(value, out var number) && fits(number) ? number : Wrong(key, value, expected, 1);
    }

    /// <summary>A place in the picture: a list of two numbers.</summary>
    public PixelPoint Point(string key)
    {
        const string expected = "a place [x, y] in pixels";
        if (!TryGet(key, out var value)) return Missing(key, expected, default(PixelPoint));
        if (value.ValueKind == JsonValueKind.Array && value.GetArrayLength() == 2 && IsNumber(value[0], out var x) && IsNumber(value[1], out var y)) return new(x, y);
        return Wrong(key, value, expected, default(PixelPoint));
    }

    /// <summary>A list with at least <paramref name="least"/> items.</summary>
    public IReadOnlyList<JsonElement> List(string key, string expected, int least)
    {
        if (!TryGet(key, out var value)) return Missing<IReadOnlyList<JsonElement>>(key, expected, []);
        return value.ValueKind == JsonValueKind.Array && value.GetArrayLength() >= least
            ? [.. value.EnumerateArray()]
            : Wrong<IReadOnlyList<JsonElement>>(key, value, expected, []);
    }

    private static bool IsNumber(JsonElement value, out double number)
    {
        number = 0;
        return value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out number) && double.IsFinite(number);
    }

    // A null says "not given", like a key that is left out.
    private bool TryGet(string key, out JsonElement value)
    {
        value = default;
        return isObject && item.TryGetProperty(key, out value) && value.ValueKind != JsonValueKind.Null;
    }

    private T Missing<T>(string key, string expected, T harmless)
    {
        if (isObject) faults.Add(new(Where(key), expected, SeeingSentences.Missing(Where(key), expected)));
        return harmless;
    }

    private T Wrong<T>(string key, JsonElement value, string expected, T harmless)
    {
        faults.Add(new(Where(key), expected, SeeingSentences.Wrong(Where(key), value.GetRawText(), expected)));
        return harmless;
    }

    private string Where(string key) => place.Length == 0 ? key : place + "." + key;
}
