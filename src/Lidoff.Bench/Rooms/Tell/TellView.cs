using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Telling.Claims;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Tell;

/// <summary>What the room Tell shows: the claims with their state.</summary>
/// <param name="Claims">Stale ones first, then in natural order.</param>
/// <param name="References">What a claim may lean on, in the order it is offered.</param>
/// <param name="Free">The first name that no claim has.</param>
/// <param name="Published">How many claims somebody has published.</param>
public sealed record TellView(ValueList<ClaimRow> Claims, ValueList<string> References, string Free, int Published)
{
    /// <summary>The room as the dossier stands.</summary>
    public static TellView Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        var written = new Dictionary<EntryId, ClaimWritten>();
        foreach (var claim in view.Live<ClaimWritten>()) written[claim.Id] = claim.Value;
        var claims = dossier.Claims;
        var references = SpotNames.Of(view).Select(spot => "part:" + spot)
            // A part that is named has something to say.
            .OrderBy(part => dossier.Model.Value(part).Missing is null ? 0 : 1).Concat(NumberReferences.Of(view).Select(each => each.Reference)).ToList();
        return new(
            [.. claims.Select(claim => Row(claim, written[claim.Written])).OrderBy(row => row.Stale ? 0 : row.Unfinished ? 1 : 2).ThenBy(row => row.Id, NaturalOrder.Instance)],
            [.. references],
            FreeName.Of("C", [.. claims.Select(claim => claim.Name)]),
            claims.Count(claim => claim.Published is not null));
    }

    /// <summary>How a sentence would read with its values filled in; null where its braces do not fit.</summary>
    public static string? Reads(OpenDossier dossier, string text) => ClaimText.Parse(text).TryValue(out var parsed)
        ? string.Concat(parsed.Pieces.Select(piece => piece.IsReference ? Telling.Reporting.ReportContext.Print(dossier.Model.Value(piece.Text)) : piece.Text))
        : null;

    private static ClaimRow Row(Claim claim, ClaimWritten written) => new(
        claim.Name,
        claim.Text,
        written.Text,
        written.Why,
        claim.Grade,
        TellSentences.Word(claim.State, claim.Published is not null),
        TellSentences.Means(claim.State, claim.Published is not null),
        [.. Moved(claim)],
        claim.RestsOn.Count,
        claim.SupportErased,
        claim.Published is not null,
        claim.Written);

    private static IEnumerable<MovedRow> Moved(Claim claim)
    {
        foreach (var now in claim.Values)
        {
            var then = claim.Published?.Values.FirstOrDefault(each => each.Reference == now.Reference);
            if (now.Lost) yield return new(now.Reference, then is null ? "" : PublishedText.Of(then, now), then?.Value is null && then?.Text is null ? "never measured" : "nothing any more");
            else if (then is not null && (then.Text != now.Text || !Nullable.Equals(then.Value, now.Value) || !Nullable.Equals(then.U, now.U)))
                yield return new(now.Reference, PublishedText.Of(then, now), now.Printed);
        }
    }
}
