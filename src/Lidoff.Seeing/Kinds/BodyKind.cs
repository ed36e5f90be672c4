using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>The body size of what sits at a spot.</summary>
public sealed class BodyKind : EvidenceKind<BodySighting>
{
    /// <inheritdoc/>
    public override string Name => "body";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "The two sides of a body, measured.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "what it belongs to"),
        new("mm", "list of numbers", true, "both sides, mm, above zero"),
        new("u_mm", "number", false, "standard uncertainty of each side, mm (default 0.015, a calliper)"),
        new("height_mm", "number", false, "height of its top above the board, mm"),
    ];

    /// <inheritdoc/>
    public override Outcome<BodySighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = SpotName.Read(reader);
        var (first, second) = reader.Pair("mm", NumberRange.Positive);
        var u = reader.OptionalNumber("u_mm", NumberRange.NotNegative) ?? InstrumentLength.DefaultUMm;
        var height = reader.OptionalNumber("height_mm", NumberRange.Positive);
        return reader.Done(() => new BodySighting(spot, first, second, u, height));
    }
}
