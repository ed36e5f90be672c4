using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Naming.Knowing;
using Lidoff.Numbers.Failing;

namespace Lidoff.Naming.Kinds;

/// <summary>A person settles which part sits at a spot.</summary>
public sealed class DecideKind : EvidenceKind<IdentityDecision>
{
    /// <inheritdoc/>
    public override string Name => "decide";

    /// <inheritdoc/>
    public override EntryRole Role => EntryRole.Decision;

    /// <inheritdoc/>
    public override string Room => "Name";

    /// <inheritdoc/>
    public override string Says => "A person accepts or rejects a candidate for a spot, accepts a family, or says it is in no list, with the reason.";

    /// <inheritdoc/>
    public override IReadOnlyList<KindKey> Keys { get; } =
    [
        new("spot", "text", true, "the spot's designator"),
        new("accept", "text", false, "the part it is"),
        new("accept_family", "text", false, "the family it is of, where the member is not known: what all of them begin with, x for a place left open (TPS6274x)"),
        new("reject", "text", false, "a part it is not"),
        new("not_listed", "true", false, "it is in no list"),
        new("why", "text", true, "the reason"),
    ];

    /// <inheritdoc/>
    public override Outcome<IdentityDecision> Read(JsonElement payload, int version)
    {
        var reader = new PayloadReader(payload);
        var spot = reader.Text("spot", 40);
        var accept = reader.OptionalText("accept", 200);
        var family = reader.OptionalText("accept_family", 200);
        var reject = reader.OptionalText("reject", 200);
        var notListed = reader.OptionalFlag("not_listed") ?? false;
        var why = reader.Text("why");
        var ways = (accept is null ? 0 : 1) + (family is null ? 0 : 1) + (reject is null ? 0 : 1) + (notListed ? 1 : 0);
        var done = reader.Done(() => new IdentityDecision(
            spot, accept is not null ? Verdict.Accept : family is not null ? Verdict.Family : reject is not null ? Verdict.Reject : Verdict.NotListed, accept ?? family ?? reject ?? "", why));
        if (family is not null && !PartFamily.Says(family)) return Outcome<IdentityDecision>.Failed([.. done.Faults, KindSentences.FamilyTooShort]);
        return ways == 1 ? done : Outcome<IdentityDecision>.Failed([.. done.Faults, KindSentences.OneVerdict]);
    }
}
