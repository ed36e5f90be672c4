using Lidoff.Evidence.Entries;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>What the room Tell shows: the claims with their state.</summary>
/// <param name="Claims">In their order.</param>
public sealed record TellView(ValueList<ClaimRow> Claims)
{
    /// <summary>The room as the dossier stands.</summary>
    public static TellView Of(OpenDossier dossier) => new([.. dossier.Claims.Select(Row)]);

    private static ClaimRow Row(Claim claim) => new(
        claim.Name,
        claim.Text,
        claim.Grade,
        claim.Published is null && claim.State == ClaimState.Same ? "new" : claim.State == ClaimState.ProgramChanged ? "program changed" : claim.State.ToString().ToLowerInvariant(),
        claim.RestsOn.Count);
}
