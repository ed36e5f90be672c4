using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Tracing.Kinds;

/// <summary>A supply was measured.</summary>
public sealed class SupplyKind : EvidenceKind<SupplySighting>
{
    // A hand meter of 0.5 % at about 3 V; common practice, no source.
    private const double DefaultUV = 0.02;

    /// <inheritdoc/>
    public override string Name => "supply";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Trace";

    /// <inheritdoc/>
    public override string Says => "The supply voltage of a part, measured at its pin.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "the part"),
        new("pin", "text", false, "the pin it was measured at"),
        new("v", "number", true, "voltage, V"),
        new("u_v", "number", false, "its standard uncertainty, V (default 0.02)"),
    ];

    /// <inheritdoc/>
    public override Outcome<SupplySighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = reader.Text("spot", Points.LongestName);
        var pin = reader.OptionalText("pin", Points.LongestName) ?? "";
        var v = reader.Number("v", new NumberRange(-1000, 1000));
        var u = reader.OptionalNumber("u_v", NumberRange.NotNegative) ?? DefaultUV;
        return reader.Done(() => new SupplySighting(spot, pin, v, u));
    }
}
