using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Kinds;

/// <summary>The pitch of leads, balls or ways.</summary>
public sealed class PitchKind : EvidenceKind<PitchSighting>
{
    // One calliper reading spread over the gaps of a usual row; who measured one gap alone says so.
    private const double DefaultUMm = 0.01;

    /// <inheritdoc/>
    public override string Name => "pitch";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "See";

    /// <inheritdoc/>
    public override string Says => "The distance from one lead, ball or way to the next.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "what it belongs to"),
        new("mm", "number", true, "pitch, mm, above zero"),
        new("u_mm", "number", false, "its standard uncertainty, mm (default 0.01)"),
        new("leads", "whole number", false, "over how many leads it was taken"),
    ];

    /// <inheritdoc/>
    public override Outcome<PitchSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = SpotName.Read(reader);
        var mm = reader.Number("mm", NumberRange.Positive);
        var u = reader.OptionalNumber("u_mm", NumberRange.NotNegative) ?? DefaultUMm;
        var leads = reader.OptionalWhole("leads", 2, 10_000) ?? 0;
        return reader.Done(() => new PitchSighting(spot, mm, u, (int)leads));
    }
}
