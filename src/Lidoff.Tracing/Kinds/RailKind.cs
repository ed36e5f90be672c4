using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Tracing.Kinds;

/// <summary>A supply rail was drawn by hand.</summary>
public sealed class RailKind : EvidenceKind<RailDrawn>
{
    /// <inheritdoc/>
    public override string Name => "rail";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "Trace";

    /// <inheritdoc/>
    public override string Says => "A supply drawn by hand: what makes it, what it feeds, its voltage; the newest entry of a name counts.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("rail", "text", true, "its name, such as VSYS"),
        new("v", "number", false, "voltage, V"),
        new("u_v", "number", false, "its standard uncertainty, V"),
        new("from", "text", false, "the spot that makes it: cell, charger, converter"),
        new("to", "list of texts", false, "spots that it feeds"),
        new("net", "text", false, "the net it is"),
        new("why", "text", false, "the reason"),
        new("dropped", "flag", false, "true when there is no such rail after all"),
    ];

    /// <inheritdoc/>
    public override Outcome<RailDrawn> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var rail = reader.Text("rail", Points.LongestName).Trim();
        var v = reader.OptionalNumber("v", new NumberRange(-1000, 1000));
        var u = reader.OptionalNumber("u_v", NumberRange.NotNegative);
        var from = reader.OptionalText("from", Points.LongestName)?.Trim() ?? "";
        var to = reader.Texts("to", most: 1_000, longest: Points.LongestName).Select(spot => spot.Trim()).ToList();
        var net = reader.OptionalText("net", Points.LongestName)?.Trim() ?? "";
        var why = reader.OptionalText("why", 2_000) ?? "";
        var dropped = reader.OptionalFlag("dropped") ?? false;
        Points.Needs(reader, "u_v", "v");
        if (to.Distinct(StringComparer.Ordinal).Count() != to.Count) reader.Fail("to", "a list in which every spot stands once");
        if (from.Length > 0 && to.Contains(from, StringComparer.Ordinal)) reader.Fail("to", "a list without the spot that makes the rail");
        return reader.Done(() => new RailDrawn(rail, v, u, from, to.ToValueList(), net, why, dropped));
    }
}
