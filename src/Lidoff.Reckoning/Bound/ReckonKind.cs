using System.Text.Json;
using System.Text.RegularExpressions;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Reckoning.Bound;

/// <summary>A reckoning of the dossier: a calculation with its inputs, typed or referred to; the newest entry of a designator counts.</summary>
public sealed partial class ReckonKind : EvidenceKind<ReckonBinding>
{
    private const int LongestInput = 500;
    private const int MostInputs = 50;
    private const string InputsExpected = "an object of inputs, each a value such as \"122 mAh ± 6\", a number, or {\"from\": \"length:U1:long side\"}";

    /// <inheritdoc/>
    public override string Name => "reckon";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "Reckon";

    /// <inheritdoc/>
    public override string Says => "an engineering number bound to its inputs, reckoned anew whenever one of them moves";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("reckoning", "text", true, "designator, such as R1; the newest entry of a designator counts"),
        new("calculation", "text", true, "name of the calculation, as `lidoff reckon --list` gives it"),
        new("inputs", "object", true, "each key of the calculation with a value (\"122 mAh ± 6\"), a number in its unit, or {\"from\": reference}; references are length:SPOT:NAME, R2 and the like"),
        new("says", "text", false, "the question it answers"),
    ];

    /// <inheritdoc/>
    public override Outcome<ReckonBinding> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var reckoning = reader.Text("reckoning", 20);
        if (reckoning.Length > 0 && !Designator().IsMatch(reckoning)) reader.Fail("reckoning", "a designator such as R1");
        var calculation = reader.Text("calculation", 60);
        var says = reader.OptionalText("says", 500) ?? "";
        var inputs = Inputs(reader);
        return reader.Done(() => new ReckonBinding(reckoning, calculation, inputs, says));
    }

    private static ValueList<BoundInput> Inputs(PayloadReader reader)
    {
        if (reader.Raw("inputs") is not { ValueKind: JsonValueKind.Object } inputs)
        {
            reader.Fail("inputs", InputsExpected);
            return [];
        }

        var read = new List<BoundInput>();
        foreach (var property in inputs.EnumerateObject())
        {
            if (read.Count == MostInputs)
            {
                reader.Fail("inputs", "an object of at most 50 inputs");
                break;
            }

            if (Input(property) is not { } input) reader.Fail("inputs." + NameOf(property), "a value such as \"122 mAh ± 6\", a number, or {\"from\": \"length:U1:long side\"}");
            else if (read.Any(other => other.Key == input.Key)) reader.Fail("inputs." + property.Name, "given once");
            else read.Add(input);
        }

        return read.ToValueList();
    }

    private static BoundInput? Input(JsonProperty property)
    {
        try
        {
            var value = property.Value;
            return value.ValueKind switch
            {
                JsonValueKind.String when Fits(value.GetString()!) => new(property.Name, value.GetString()!.Trim(), ""),
                JsonValueKind.Number when Fits(value.GetRawText()) => new(property.Name, value.GetRawText(), ""),
                JsonValueKind.Object when value.TryGetProperty("from", out var from) && from.ValueKind == JsonValueKind.String && Fits(from.GetString()!) =>
                    new(property.Name, "", from.GetString()!.Trim()),
                _ => null,
            };
        }
        catch (InvalidOperationException)
        {
            // Half of a surrogate pair is JSON but no text.
            return null;
        }
    }

    private static string NameOf(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException)
        {
            return "?";
        }
    }

    private static bool Fits(string text) => !string.IsNullOrWhiteSpace(text) && text.Length <= LongestInput;

    [GeneratedRegex("^R[0-9]{1,6}$", RegexOptions.CultureInvariant)]
    private static partial Regex Designator();
}
