using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;

namespace Lidoff.Opening.Kinds;

/// <summary>How the device behaved before it was opened.</summary>
public sealed class StateKind : EvidenceKind<StateSighting>
{
    /// <inheritdoc/>
    public override string Name => "state";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Open";

    /// <inheritdoc/>
    public override string Says => "A state seen before opening: its lights, its buttons, how long it lasts, the current it draws.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("name", "text", true, "the state, such as idle or charging"),
        new("says", "text", false, "what it does"),
        new("lights", "text", false, "what its lights do"),
        new("buttons", "text", false, "which presses lead there"),
        new("lasts_s", "number", false, "how long it lasts, s"),
        new("current_ua", "number", false, "current, µA; negative while charging"),
        new("u_ua", "number", false, "standard uncertainty of the current, µA"),
    ];

    /// <inheritdoc/>
    public override Outcome<StateSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var name = reader.Text("name", 100);
        var says = reader.OptionalText("says", 2_000) ?? "";
        var lights = reader.OptionalText("lights", 400) ?? "";
        var buttons = reader.OptionalText("buttons", 400) ?? "";
        var lasts = reader.OptionalNumber("lasts_s", NumberRange.NotNegative);
        var current = reader.OptionalNumber("current_ua");
        var u = reader.OptionalNumber("u_ua", NumberRange.NotNegative);
        if (reader.Has("u_ua") && !reader.Has("current_ua")) reader.Fail("current_ua", "given when \"u_ua\" is");
        return reader.Done(() => new StateSighting(name, says, lights, buttons, lasts, current, u));
    }
}
