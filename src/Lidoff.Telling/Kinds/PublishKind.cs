using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Claims;

namespace Lidoff.Telling.Kinds;

/// <summary>A publication: the values every claim had, so that later changes can be told from what readers were told.</summary>
public sealed class PublishKind : EvidenceKind<ClaimsPublished>
{
    /// <inheritdoc/>
    public override string Name => "publish";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "Tell";

    /// <inheritdoc/>
    public override string Says => "what every claim said when the report was let out; written by tell --publish";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("claims", "list of objects", true, "each with claim, program, and values: reference, value, u, low, high or text, rests_on"),
    ];

    /// <inheritdoc/>
    public override Outcome<ClaimsPublished> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var claims = reader.Inners("claims", least: 0, most: 10_000).Select(Baseline).ToList();
        return reader.Done(() => new ClaimsPublished([.. claims]));
    }

    /// <summary>The keys of a publication's payload, in the order of <see cref="Keys"/>, into an object that is open.</summary>
    public static void WriteKeys(Utf8JsonWriter json, IReadOnlyList<ClaimBaseline> claims)
    {
        json.WriteStartArray("claims");
        foreach (var claim in claims)
        {
            json.WriteStartObject();
            json.WriteString("claim", claim.Claim);
            json.WriteString("program", claim.Program);
            json.WriteStartArray("values");
            foreach (var value in claim.Values)
            {
                json.WriteStartObject();
                json.WriteString("reference", value.Reference);
                if (value.Value is { } number) json.WriteNumber("value", number);
                if (value.U is { } u) json.WriteNumber("u", u);
                if (value.Low is { } low) json.WriteNumber("low", low);
                if (value.High is { } high) json.WriteNumber("high", high);
                if (value.Text is { } text) json.WriteString("text", text);
                json.WriteStartArray("rests_on");
                foreach (var id in value.RestsOn) json.WriteStringValue(id);
                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static ClaimBaseline Baseline(PayloadReader reader)
    {
        var (claim, program) = (reader.Text("claim", 40), reader.Text("program", 100));
        var values = reader.Inners("values").Select(Value).ToList();
        return new ClaimBaseline(claim, program, [.. values]);
    }

    private static BaselineValue Value(PayloadReader reader) => new(
        reader.Text("reference", 200),
        reader.OptionalNumber("value"),
        reader.OptionalNumber("u"),
        reader.OptionalNumber("low"),
        reader.OptionalNumber("high"),
        reader.OptionalText("text", 400),
        reader.Texts("rests_on"));
}
