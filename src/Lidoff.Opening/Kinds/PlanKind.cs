using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Cautioning;

namespace Lidoff.Opening.Kinds;

/// <summary>A step of opening is planned, or taken off the plan.</summary>
public sealed class PlanKind : EvidenceKind<StepPlanned>
{
    private const int Most = 50;

    /// <inheritdoc/>
    public override string Name => "plan";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "Open";

    /// <inheritdoc/>
    public override string Says => "A step that is meant to be done, what it will destroy and what must be recorded first; the newest entry of a name counts.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("plan", "text", true, "its name, such as P1"),
        new("does", "text", false, "what is to be done; must be there unless it is dropped"),
        new("act", "text", false, "one of the acts that cautions belong to: look, cut, pry, heat, cell, charge, supply …"),
        new("destroys", "text", false, "what can no longer be seen or measured afterwards"),
        new("record_first", "list of texts", false, "what must be recorded before: a reference such as mass:CASE, or words"),
        new("recorded", "list of texts", false, "those of record_first that are recorded"),
        new("after", "list of texts", false, "names of plans that come first"),
        new("why", "text", false, "the reason"),
        new("dropped", "flag", false, "true when it is not meant any more"),
    ];

    /// <inheritdoc/>
    public override Outcome<StepPlanned> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var plan = reader.Text("plan", 40).Trim();
        var dropped = reader.OptionalFlag("dropped") ?? false;
        var does = dropped ? reader.OptionalText("does", 2_000) ?? "" : reader.Text("does", 2_000);
        var act = reader.OptionalOneOf("act", StepAct.Other, StepActs.Words);
        var destroys = reader.OptionalText("destroys", 2_000) ?? "";
        var first = Names(reader, "record_first", 400);
        var recorded = Names(reader, "recorded", 400);
        var after = Names(reader, "after", 40);
        var why = reader.OptionalText("why", 2_000) ?? "";
        if (recorded.Except(first, StringComparer.Ordinal).Any()) reader.Fail("recorded", "a list of things that stand in \"record_first\"");
        if (after.Contains(plan, StringComparer.Ordinal)) reader.Fail("after", "a list of other plans");
        return reader.Done(() => new StepPlanned(plan, does, act, destroys, first.ToValueList(), recorded.ToValueList(), after.ToValueList(), why, dropped));
    }

    private static List<string> Names(PayloadReader reader, string key, int longest)
    {
        var names = reader.Texts(key, most: Most, longest: longest).Select(name => name.Trim()).ToList();
        if (names.Distinct(StringComparer.Ordinal).Count() != names.Count) reader.Fail(key, "a list in which everything stands once");
        return names;
    }
}
