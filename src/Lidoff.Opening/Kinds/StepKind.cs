using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Cautioning;

namespace Lidoff.Opening.Kinds;

/// <summary>A step of opening was done.</summary>
public sealed class StepKind : EvidenceKind<StepSighting>
{
    /// <inheritdoc/>
    public override string Name => "step";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Open";

    /// <inheritdoc/>
    public override string Says => "A step of opening: what was done, with which tool and setting, how long it took and what it destroyed.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("does", "text", true, "what was done"),
        new("act", "text", false, "one of the acts that cautions belong to: look, cut, pry, heat, cell, charge, supply …"),
        new("tool", "text", false, "tool and blade"),
        new("setting", "text", false, "temperature, time, torque, as words"),
        new("minutes", "number", false, "how long it took, min"),
        new("destroys", "text", false, "what can no longer be seen or measured"),
        new("picture", "text", false, "file name, entry id or the first digits of the file's hash"),
        new("plan", "text", false, "the plan that it carried out, such as P1"),
    ];

    /// <inheritdoc/>
    public override Outcome<StepSighting> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var does = reader.Text("does", 2_000);
        var act = reader.OptionalOneOf("act", StepAct.Other, StepActs.Words);
        var tool = reader.OptionalText("tool", 400) ?? "";
        var setting = reader.OptionalText("setting", 400) ?? "";
        var minutes = reader.OptionalNumber("minutes", NumberRange.NotNegative);
        var destroys = reader.OptionalText("destroys", 2_000) ?? "";
        var picture = reader.OptionalText("picture", 255) ?? "";
        var plan = reader.OptionalText("plan", 40)?.Trim() ?? "";
        return reader.Done(() => new StepSighting(does, act, tool, setting, minutes, destroys, picture, plan));
    }
}
