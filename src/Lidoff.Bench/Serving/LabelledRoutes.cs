using System.Text;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Drawing.Labelling;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Net.Http.Headers;

namespace Lidoff.Bench.Serving;

/// <summary>
/// A picture to take home: <c>/dossiers/NAME/labelled/HASH.svg</c> and <c>.png</c>, with letters, leaders and a scale bar. What is in
/// it is drawn anew, so it carries no place, camera serial or name of an owner.
/// </summary>
internal static class LabelledRoutes
{
    public static void MapLabelled(this IEndpointRouteBuilder routes) => routes.MapGet("/dossiers/{dossier}/labelled/{file}", async (string dossier, string file, HttpContext context, IBenchData data) =>
    {
        var dot = file.LastIndexOf('.');
        var (sha256, form) = dot < 0 ? ("", "") : (file[..dot], file[dot..]);
        if (!FileRoutes.Hash(sha256) || form is not (".svg" or ".png"))
        {
            await Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NoPicture).ConfigureAwait(false);
            return;
        }

        // Drawn off the server's thread.
        var drawn = await Task.Run(() => Draw(data, dossier, sha256), context.RequestAborted).ConfigureAwait(false);
        if (drawn is not { Picture: { } labelled, Name: var name })
        {
            await Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NoPicture).ConfigureAwait(false);
            return;
        }

        if (!labelled.TryValue(out var picture))
        {
            await Gates.Refuse(context, StatusCodes.Status422UnprocessableEntity, string.Join(' ', labelled.Faults.Select(fault => fault.Say))).ConfigureAwait(false);
            return;
        }

        var bytes = form == ".svg" ? Encoding.UTF8.GetBytes(picture.Svg()) : picture.Png();
        context.Response.Headers.ContentSecurityPolicy = SafetyHeaders.FilePolicy;
        context.Response.Headers.CacheControl = "private, no-store";
        var disposition = new ContentDispositionHeaderValue("attachment");
        disposition.SetHttpFileName(name + form);
        context.Response.Headers.ContentDisposition = disposition.ToString();
        context.Response.ContentType = form == ".svg" ? "image/svg+xml" : "image/png";
        context.Response.ContentLength = bytes.Length;
        await context.Response.Body.WriteAsync(bytes, context.RequestAborted).ConfigureAwait(false);
    });

    // Only gathering holds the dossier; the drawing itself keeps no other page waiting.
    private static (Outcome<LabelledPicture>? Picture, string Name) Draw(IBenchData data, string dossier, string sha256)
    {
        var found = data.View(dossier, open => open.Session.View.Live<FileAdded>().Any(file => file.Value.Sha256 == sha256)
            ? new Gathered(DossierPicture.Gather(open.Session.View, open.Model, sha256, open.Workspace.Files.PathOf(sha256), new()), TakeHomeName.Of(open.Session.View, open.Model, sha256))
            : new Gathered(null, ""));
        return (found?.Picture?.Then(picture => picture.Draw()), found?.Name ?? "");
    }

    private sealed record Gathered(Outcome<PictureToLabel>? Picture, string Name);
}
