using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Opening.Kinds;

/// <summary>A physical unit comes to the bench.</summary>
public sealed class SpecimenKind : EvidenceKind<SpecimenSighting>
{
    /// <inheritdoc/>
    public override string Name => "specimen";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Open";

    /// <inheritdoc/>
    public override string Says => "A unit on the bench: what it is, when and where it was bought, its mass, and whether it may be destroyed.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("specimen", "text", true, "its short name, such as A"),
        new("says", "text", false, "what it is"),
        new("from", "text", false, "where it was bought"),
        new("bought", "text", false, "day it was bought, such as 2026-01-12"),
        new("revision", "text", false, "revision, region or colour"),
        new("may_destroy", "flag", false, "whether it may be destroyed"),
        new("mass_g", "number", false, "mass of the whole, g"),
        new("u_g", "number", false, "its standard uncertainty, g (default 0.01)"),
    ];

    /// <inheritdoc/>
    public override Outcome<SpecimenSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var specimen = reader.Text("specimen", 40);
        var says = reader.OptionalText("says") ?? "";
        var from = reader.OptionalText("from", 400) ?? "";
        var bought = Day.Read(reader, "bought");
        var revision = reader.OptionalText("revision", 200) ?? "";
        var mayDestroy = reader.OptionalFlag("may_destroy");
        var mass = reader.OptionalNumber("mass_g", NumberRange.Positive);
        var u = reader.OptionalNumber("u_g", NumberRange.NotNegative) ?? MassKind.DefaultUG;
        return reader.Done(() => new SpecimenSighting(specimen, says, from, bought, revision, mayDestroy, mass, u));
    }
}
