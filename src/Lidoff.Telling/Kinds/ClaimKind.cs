using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Claims;

namespace Lidoff.Telling.Kinds;

/// <summary>A sentence that leans on numbers and names of the dossier by reference, so that it knows when one of them moves.</summary>
public sealed class ClaimKind : EvidenceKind<ClaimWritten>
{
    /// <inheritdoc/>
    public override string Name => "claim";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "Tell";

    /// <inheritdoc/>
    public override string Says => "a sentence of the report; what stands in braces is filled in live and kept watch over";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("claim", "text", true, "short name, such as C1; the newest entry of a name counts"),
        new("text", "text", true, "the sentence, with references such as {length:U1:long side}, {part:U1} or {reckoning:R1}"),
        new("why", "flag", false, "true where it says why something was done: such a claim is E2 at most without its maker's word"),
    ];

    /// <inheritdoc/>
    public override Outcome<ClaimWritten> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var name = reader.Text("claim", 40);
        var text = reader.Text("text", 2_000);
        var why = reader.OptionalFlag("why") ?? false;
        if (text.Length > 0 && ClaimText.Parse(text) is { Ok: false } broken) reader.Fail("text", broken.Faults[0].Expected);
        return reader.Done(() => new ClaimWritten(name, text, why));
    }
}
