using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Tracing.Kinds;

/// <summary>A net was drawn by hand.</summary>
public sealed class NetKind : EvidenceKind<NetDrawn>
{
    /// <inheritdoc/>
    public override string Name => "net";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "Trace";

    /// <inheritdoc/>
    public override string Says => "A net drawn by hand: these points are one, whatever the touches say so far.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("net", "text", true, "its name, such as VBAT"),
        new("points", "list of texts", true, "the points on it, such as U3.13"),
        new("why", "text", false, "the reason"),
    ];

    /// <inheritdoc/>
    public override Outcome<NetDrawn> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var net = reader.Text("net", Points.LongestName);
        var points = reader.Texts("points", least: 1, most: 10_000, longest: Points.LongestName).Select(text => new TouchPoint(text.Trim())).ToList();
        var why = reader.OptionalText("why", 2_000) ?? "";
        if (points.Distinct().Count() != points.Count) reader.Fail("points", "a list in which every point stands once");
        return reader.Done(() => new NetDrawn(net, points.ToValueList(), why));
    }
}
