using System.Globalization;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Working;
using Lidoff.Numbers.Failing;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Routing;

namespace Lidoff.Bench.Serving;

/// <summary>
/// Recordings in: begun with <c>POST /dossiers/NAME/recordings</c>, sent piece by piece with <c>POST /recordings/ID?at=BYTES</c>, ended with
/// <c>POST /recordings/ID/end</c>. A piece counts as stored only when the answer says so, and may be sent again.
/// </summary>
internal static class RecordingRoutes
{
    public static void MapRecordings(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/dossiers/{dossier}/recordings", async (string dossier, HttpContext context, BenchOptions options, IAntiforgery antiforgery) =>
        {
            if (await Desk(context, options, antiforgery).ConfigureAwait(false) is not { } desk) return;
            var query = context.Request.Query;
            string Tag(string key) => Short(query[key].ToString());
            var begun = desk.Begin(new(dossier, "", query["voice"] == "1", query["type"].ToString().Contains("mp4", StringComparison.Ordinal) ? "mp4" : "webm", Tag("zoom"), Tag("light"), Tag("camera")));
            await Answer(context, begun, each => new { id = each.Id, recording = each.Recording }).ConfigureAwait(false);
        }).DisableAntiforgery();
        routes.MapPost("/recordings/{id}", async (string id, HttpContext context, BenchOptions options, IAntiforgery antiforgery) =>
        {
            if (await Desk(context, options, antiforgery).ConfigureAwait(false) is not { } desk) return;
            context.Features.GetRequiredFeature<IHttpMaxRequestBodySizeFeature>().MaxRequestBodySize = RecordingDesk.MostPiece;
            var at = long.TryParse(context.Request.Query["at"], NumberStyles.None, CultureInfo.InvariantCulture, out var bytes) ? bytes : -1;
            await Answer(context, await desk.Append(id, at, context.Request.Body, context.RequestAborted).ConfigureAwait(false), stored => new { bytes = stored }).ConfigureAwait(false);
        }).DisableAntiforgery();
        routes.MapPost("/recordings/{id}/end", async (string id, HttpContext context, BenchOptions options, Acts acts, HeadsWatch watch, IAntiforgery antiforgery) =>
        {
            if (await Desk(context, options, antiforgery).ConfigureAwait(false) is not { } desk) return;
            var dossier = desk.DossierOf(id);
            var kept = await desk.End(id).ConfigureAwait(false);
            if (kept.TryValue(out var recording)) acts.Did(dossier!, "recording " + recording.Recording, recording.Entries);
            watch.Poke();
            await Answer(context, kept, each => new { recording = each.Recording, sha256 = each.Sha256 }).ConfigureAwait(false);
        }).DisableAntiforgery();
    }

    private static async Task<RecordingDesk?> Desk(HttpContext context, BenchOptions options, IAntiforgery antiforgery)
    {
        if (!await antiforgery.IsRequestValidAsync(context).ConfigureAwait(false)) await Gates.Refuse(context, StatusCodes.Status400BadRequest, BenchSentences.NoToken).ConfigureAwait(false);
        else if (options.Recordings is { } desk) return desk;
        else await Gates.Refuse(context, StatusCodes.Status422UnprocessableEntity, RecordingSentences.NoPlace.Say).ConfigureAwait(false);
        return null;
    }

    private static Task Answer<T>(HttpContext context, Outcome<T> outcome, Func<T, object> say) => outcome.TryValue(out var value)
        ? context.Response.WriteAsJsonAsync(say(value), context.RequestAborted)
        : Gates.Refuse(context, StatusCodes.Status422UnprocessableEntity, string.Join(' ', outcome.Faults.Select(fault => fault.Say)));

    // As long as the kind takes; a lone half of a surrogate pair could not be written.
    private static string Short(string text)
    {
        var clean = string.Concat(text.Trim().EnumerateRunes());
        return clean.Length <= 100 ? clean : clean[..(char.IsHighSurrogate(clean[99]) ? 99 : 100)];
    }
}
