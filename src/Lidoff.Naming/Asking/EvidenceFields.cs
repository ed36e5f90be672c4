using System.Globalization;
using System.Text.Json;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Asking;

/// <summary>Reads the single values of a line of evidence and collects every fault.</summary>
internal sealed class EvidenceFields
{
    internal List<Fault> Faults { get; } = [];

    internal List<string> Remarks { get; } = [];

    internal double? Number(string key, JsonElement value, double least, double most, string expected)
    {
        if (value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && number >= least && number <= most) return number;
        return Fail<double>(key, expected);
    }

    internal int? Whole(string key, JsonElement value, int least, int most, string expected)
    {
        if (value.ValueKind == JsonValueKind.Number && value.TryGetInt32(out var number) && number >= least && number <= most) return number;
        return Fail<int>(key, expected);
    }

    internal string? Text(string key, JsonElement value)
    {
        if (value.ValueKind == JsonValueKind.String)
        {
            var text = value.GetString()!.Trim();
            return text.Length == 0 ? null : text;
        }
        Faults.Add(EvidenceSentences.Wrong(key, "text"));
        return null;
    }

    internal string? Word(string key, JsonElement value, IReadOnlyList<string> words)
    {
        if (value.ValueKind == JsonValueKind.String && words.FirstOrDefault(w => w.Equals(value.GetString()!.Trim(), StringComparison.OrdinalIgnoreCase)) is { } word) return word;
        Faults.Add(EvidenceSentences.Wrong(key, "one of " + string.Join(", ", words)));
        return null;
    }

    internal (double A, double B)? Pair(string key, JsonElement value)
    {
        const string expected = "two body sides in mm, each from 0.05 to 200";
        if (value.ValueKind != JsonValueKind.Array || value.GetArrayLength() != 2) return Fail<(double, double)>(key, expected);
        var before = Faults.Count;
        var a = Number(key, value[0], 0.05, 200, expected);
        var b = before == Faults.Count ? Number(key, value[1], 0.05, 200, expected) : null;
        return a is { } x && b is { } y ? (x, y) : null;
    }

    internal BusFact? Bus(string key, JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.Object)
        {
            Faults.Add(EvidenceSentences.Wrong(key, "an object with \"type\" and \"address\""));
            return null;
        }
        var type = "";
        int? address = null;
        foreach (var part in value.EnumerateObject().Where(p => p.Value.ValueKind != JsonValueKind.Null))
        {
            if (part.NameEquals("type")) type = Text(key + ".type", part.Value)?.ToLowerInvariant() ?? "";
            else if (part.NameEquals("address")) address = (int?)Code(key + ".address", part.Value, 0x7F, "a 7-bit address such as \"0x68\"");
            else Remarks.Add(EvidenceSentences.Unknown(key + "." + part.Name));
        }
        return new BusFact(type, address);
    }

    internal RegisterFact? Register(string key, JsonElement value)
    {
        if (value.ValueKind != JsonValueKind.Object || !value.TryGetProperty("reg", out var reg) || !value.TryGetProperty("value", out var held))
        {
            Faults.Add(EvidenceSentences.Wrong(key, "an object with \"reg\" and \"value\""));
            return null;
        }
        foreach (var part in value.EnumerateObject().Where(p => !p.NameEquals("reg") && !p.NameEquals("value"))) Remarks.Add(EvidenceSentences.Unknown(key + "." + part.Name));
        var address = Code(key + ".reg", reg, int.MaxValue, "a register address such as \"0x75\"");
        var content = Code(key + ".value", held, long.MaxValue, "a register value such as \"0x71\"");
        return address is { } a && content is { } c ? new RegisterFact((int)a, c) : null;
    }

    internal IReadOnlyList<string> PinNames(string key, JsonElement value)
    {
        const string expected = "a list of pin numbers such as [13, \"A4\"]";
        if (value.ValueKind != JsonValueKind.Array || value.EnumerateArray().Any(p => p.ValueKind is not (JsonValueKind.Number or JsonValueKind.String)))
        {
            Faults.Add(EvidenceSentences.Wrong(key, expected));
            return [];
        }
        return [.. value.EnumerateArray().Select(p => p.ValueKind == JsonValueKind.String ? p.GetString()!.Trim() : p.GetRawText())
            .Where(p => p.Length > 0).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    /// <summary>A whole number from 0, written as a JSON number, as decimal text, or as text with 0x in front.</summary>
    private long? Code(string key, JsonElement value, long most, string expected)
    {
        long number;
        if (value.ValueKind == JsonValueKind.Number && value.TryGetInt64(out number) && number >= 0 && number <= most) return number;
        if (value.ValueKind == JsonValueKind.String)
        {
            var text = value.GetString()!.Trim();
            var hex = text.StartsWith("0x", StringComparison.OrdinalIgnoreCase);
            if (long.TryParse(hex ? text.AsSpan(2) : text, hex ? NumberStyles.AllowHexSpecifier : NumberStyles.None, CultureInfo.InvariantCulture, out number)
                && number >= 0 && number <= most) return number;
        }
        return Fail<long>(key, expected);
    }

    private T? Fail<T>(string key, string expected)
        where T : struct
    {
        Faults.Add(EvidenceSentences.Wrong(key, expected));
        return null;
    }
}
