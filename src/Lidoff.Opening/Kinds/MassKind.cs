using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Opening.Kinds;

/// <summary>Something was weighed.</summary>
public sealed class MassKind : EvidenceKind<MassSighting>
{
    // A pocket scale that shows 0.01 g and is trusted to about that; common practice, no source.
    internal const double DefaultUG = 0.01;

    /// <inheritdoc/>
    public override string Name => "mass";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Open";

    /// <inheritdoc/>
    public override string Says => "The mass of a part, or of the whole specimen where no spot is named; weighed at a step where it says so.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", false, "what was weighed; left out for the whole specimen"),
        new("g", "number", true, "mass, g, above zero"),
        new("u_g", "number", false, "its standard uncertainty, g (default 0.01)"),
        new("target", "text", false, "the step at which it was weighed: its entry's id or the first 8 digits or more"),
        new("target_line", "number", false, "the same where the step is a line above in the same input"),
    ];

    /// <inheritdoc/>
    public override Outcome<MassSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = reader.OptionalText("spot", 40) ?? "";
        var g = reader.Number("g", NumberRange.Positive);
        var u = reader.OptionalNumber("u_g", NumberRange.NotNegative) ?? DefaultUG;
        return reader.Done(() => new MassSighting(spot, g, u));
    }
}
