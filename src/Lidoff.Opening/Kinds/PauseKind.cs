using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Opening.Resuming;

namespace Lidoff.Opening.Kinds;

/// <summary>Somebody leaves the bench.</summary>
public sealed class PauseKind : EvidenceKind<BenchLeft>
{
    private static readonly string[] Facts = ["in_hand", "next", "checked", "note"];

    /// <inheritdoc/>
    public override string Name => "pause";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Sighting;

    /// <inheritdoc/>
    public override string Room => "Open";

    /// <inheritdoc/>
    public override string Says => "The bench is left: what was in hand, what comes next, what of the closing list was done.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("in_hand", "text", false, "what was in hand"),
        new("next", "text", false, "what comes next"),
        new("checked", "list of texts", false, "what of the closing list was done: " + string.Join(", ", ClosingItems.Keys)),
        new("note", "text", false, "anything else"),
    ];

    /// <inheritdoc/>
    public override Outcome<BenchLeft> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var inHand = reader.OptionalText("in_hand", 2_000) ?? "";
        var next = reader.OptionalText("next", 2_000) ?? "";
        var ticked = reader.Texts("checked", most: 100, longest: 40);
        var note = reader.OptionalText("note", 2_000) ?? "";
        if (ticked.Any(key => !ClosingItems.Keys.Contains(key, StringComparer.Ordinal))) reader.Fail("checked", "a list of " + string.Join(", ", ClosingItems.Keys));
        if (!Facts.Any(reader.Has)) reader.Fail("in_hand", "given, or one of " + string.Join(", ", Facts.Skip(1)));
        return reader.Done(() => new BenchLeft(inHand, next, ticked.Distinct(StringComparer.Ordinal).ToValueList(), note));
    }
}
