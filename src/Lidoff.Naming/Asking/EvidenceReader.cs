using System.Globalization;
using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Naming.Marks;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Asking;

/// <summary>Reads a line of <c>name</c>'s input; all faults of a line at once, unknown keys as remarks.</summary>
public static class EvidenceReader
{
    /// <summary>The package family words that evidence may use.</summary>
    public static IReadOnlyList<string> PackageWords { get; } =
        ["QFN", "DFN", "LGA", "BGA", "WLCSP", "SOIC", "SSOP", "TSSOP", "SOT", "SC70", "QFP", "chip", "module", "can", "die"];

    /// <summary>Reads one line; <paramref name="lineNumber"/> counts from 1 and stands in for a missing id.</summary>
    public static EvidenceItem Read(string line, int lineNumber) => Read(JsonLines.Line(Guard.NotNull(line), lineNumber));

    /// <summary>Reads one line of an input; its number stands in for a missing id.</summary>
    public static EvidenceItem Read(JsonLine line)
    {
        var id = Guard.NotNull(line).Number.ToString(CultureInfo.InvariantCulture);
        if (!line.Json.TryValue(out var root)) return new(id, Outcome<EvidenceLine>.Failed(line.Json.Faults));
        if (root.TryGetProperty("id", out var named) && named.ValueKind is JsonValueKind.String or JsonValueKind.Number)
            id = named.ValueKind == JsonValueKind.String ? named.GetString()! : named.GetRawText();
        if (!root.TryGetProperty("evidence", out var evidence) || evidence.ValueKind != JsonValueKind.Object)
            return new(id, EvidenceSentences.NotAnObject(line.Number));
        var unknown = root.EnumerateObject().Select(p => p.Name).Where(n => n is not ("id" or "evidence" or "format")).Select(EvidenceSentences.Unknown);
        return new(id, ReadEvidence(evidence).Then(e => new EvidenceLine(id, e.Evidence, [.. unknown, .. e.Remarks])));
    }

    /// <summary>Reads the evidence object itself.</summary>
    public static Outcome<(NameEvidence Evidence, IReadOnlyList<string> Remarks)> ReadEvidence(JsonElement evidence)
    {
        var fields = new EvidenceFields();
        var read = new NameEvidence();
        foreach (var property in evidence.EnumerateObject())
        {
            // A key that is there with null is a key that is missing.
            if (property.Value.ValueKind != JsonValueKind.Null) read = ReadKey(read, property.Name, property.Value, fields);
        }
        return fields.Faults.Count > 0
            ? Outcome<(NameEvidence, IReadOnlyList<string>)>.Failed([.. fields.Faults.OrderBy(f => f.Where, StringComparer.Ordinal)])
            : (read, fields.Remarks);
    }

    private static NameEvidence ReadKey(NameEvidence read, string key, JsonElement value, EvidenceFields fields)
    {
        switch (key)
        {
            case "mark_lines":
                return read with { Mark = MarkReading.Read(value, fields) };
            case "body_mm":
                return read with { BodyMm = fields.Pair(key, value) };
            case "u_mm":
                return read with { BodyU = fields.Number(key, value, 0, 10, "a standard uncertainty from 0 to 10 mm") ?? NameEvidence.DefaultBodyU };
            case "height_mm":
                return read with { HeightMm = fields.Number(key, value, 0.01, 100, "a height from 0.01 to 100 mm") };
            case "pins":
                return read with { Pins = fields.Whole(key, value, 1, 5000, "a whole number of pins, 1 to 5000") };
            case "pitch_mm":
                return read with { PitchMm = fields.Number(key, value, 0.05, 10, "a pitch from 0.05 to 10 mm") };
            case "package":
                return read with { Package = fields.Word(key, value, PackageWords) };
            case "bus":
                return read with { Bus = fields.Bus(key, value) };
            case "id_register":
                return read with { Identity = fields.Register(key, value) };
            case "role":
                return read with { Role = fields.Text(key, value) };
            case "class":
                return read with { Class = fields.Text(key, value) };
            case "supply_v":
                return read with { SupplyV = fields.Number(key, value, 0.1, 60, "a voltage from 0.1 to 60 V") };
            case "ground_pins":
                return read with { GroundPins = fields.PinNames(key, value) };
            case "date_code":
                return read with { DateCode = fields.Text(key, value) };
            default:
                fields.Remarks.Add(EvidenceSentences.Unknown(key));
                return read;
        }
    }
}
