using Lidoff.Weighing.Questions;

namespace Lidoff.Telling.Claims;

/// <summary>Claims as the question board and the drawer take them.</summary>
public static class TiedClaims
{
    /// <summary>The claims of a dossier, in their order.</summary>
    public static IReadOnlyList<TiedClaim> Of(IReadOnlyList<Claim> claims) =>
    [
        .. claims.Select(claim => new TiedClaim(
            claim.Name, claim.Text, claim.Grade, (claim.Published is not null && claim.State != ClaimState.Same) || claim.SupportErased,
            claim.Published is null && claim.State == ClaimState.Lost,
            [.. claim.Values.Select(value => value.Reference)], [.. claim.RestsOn])),
    ];
}
