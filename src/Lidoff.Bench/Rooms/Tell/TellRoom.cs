using Lidoff.Bench.Showing;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>Claims, report, script.</summary>
public sealed class TellRoom : IRoom
{
    /// <inheritdoc/>
    public string Name => "tell";

    /// <inheritdoc/>
    public string Title => "Tell";

    /// <inheritdoc/>
    public int Order => 6;

    /// <inheritdoc/>
    public string Tally(OpenDossier dossier)
    {
        var claims = dossier.Claims;
        var stale = claims.Count(claim => claim.State != ClaimState.Same && !TellSentences.Unfinished(claim.State, claim.Published is not null));
        return stale > 0 ? Count.Of(stale, "stale claim") : Count.Of(claims.Count, "claim");
    }
}
