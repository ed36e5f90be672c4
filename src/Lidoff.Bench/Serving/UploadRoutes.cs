using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Showing;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Routing;

namespace Lidoff.Bench.Serving;

/// <summary>
/// Files in: <c>POST /dossiers/NAME/files?name=FILE</c>, the body is the file as it is, streamed into the store. The
/// antiforgery token comes in a header. A file counts as taken in only when the answer says so.
/// </summary>
internal static class UploadRoutes
{
    public static void MapUploads(this IEndpointRouteBuilder routes) => routes.MapPost("/dossiers/{dossier}/files", Upload).DisableAntiforgery();

    private static async Task Upload(string dossier, HttpContext context, IBenchData data, BenchOptions options, IAntiforgery antiforgery)
    {
        var most = options.MostUploadBytes;
        if (await Refusal(context, dossier, data, antiforgery, most).ConfigureAwait(false) is var (status, say) && status != 0)
        {
            await Gates.Refuse(context, status, say).ConfigureAwait(false);
            return;
        }
        context.Features.GetRequiredFeature<IHttpMaxRequestBodySizeFeature>().MaxRequestBodySize = most;
        try
        {
            var name = SafeName.Of(context.Request.Query["name"])!;
            var added = await data.Add(dossier, name, context.Request.Body, context.RequestAborted).ConfigureAwait(false);
            context.Response.StatusCode = added.Ok ? StatusCodes.Status201Created : StatusCodes.Status422UnprocessableEntity;
            if (added.Ok) await context.Response.WriteAsJsonAsync(added.Value, context.RequestAborted).ConfigureAwait(false);
            else await Gates.Refuse(context, StatusCodes.Status422UnprocessableEntity, string.Join(' ', added.Faults.Select(f => f.Say))).ConfigureAwait(false);
        }
        catch (BadHttpRequestException e) when (e.StatusCode == StatusCodes.Status413PayloadTooLarge)
        {
            await Gates.Refuse(context, e.StatusCode, BenchSentences.TooLarge(most)).ConfigureAwait(false);
        }
        catch (BadHttpRequestException)
        {
            await Gates.Refuse(context, StatusCodes.Status400BadRequest, BenchSentences.BrokenOff).ConfigureAwait(false);
        }
    }

    private static async Task<(int Status, string Say)> Refusal(HttpContext context, string dossier, IBenchData data, IAntiforgery antiforgery, long most)
    {
        if (!await antiforgery.IsRequestValidAsync(context).ConfigureAwait(false)) return (StatusCodes.Status400BadRequest, BenchSentences.NoToken);
        if (data.Dossier(dossier) is null) return (StatusCodes.Status404NotFound, BenchSentences.NoDossier);
        if (SafeName.Of(context.Request.Query["name"]) is null) return (StatusCodes.Status400BadRequest, BenchSentences.NoName);
        if (context.Request.ContentLength > most) return (StatusCodes.Status413PayloadTooLarge, BenchSentences.TooLarge(most));
        return (0, "");
    }
}
