using System.Text.Json;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Kinds;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>What <c>tell --publish</c> stores, as a line, so that it can be taken back like anything else.</summary>
public static class PublishLine
{
    /// <summary>Every claim as it reads now.</summary>
    public static Line Of(OpenDossier dossier)
    {
        var draft = EntryDraft.Of(dossier.Session.Name, new PublishKind(), json => PublishKind.WriteKeys(json, [.. dossier.Claims.Select(claim => ClaimBook.Baseline(claim, OpenDossier.Program))]));
        using var payload = JsonDocument.Parse(draft.Payload);
        var claims = payload.RootElement.GetProperty("claims").Clone();
        return Line.Of("publish").With("claims", claims.WriteTo);
    }
}
