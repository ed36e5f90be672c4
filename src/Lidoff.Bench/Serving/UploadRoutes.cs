using System.Globalization;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Showing;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
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
    public static void MapUploads(this IEndpointRouteBuilder routes)
    {
        routes.MapPost("/dossiers/{dossier}/files", Upload).DisableAntiforgery();
        // A picture dropped on an empty bench begins a dossier: nobody should have to name a thing before looking at it.
        routes.MapPost("/files", (HttpContext context, IBenchData data, BenchOptions options, Acts acts, IAntiforgery antiforgery) =>
            Upload("", context, data, options, acts, antiforgery)).DisableAntiforgery();
    }

    private static async Task Upload(string dossier, HttpContext context, IBenchData data, BenchOptions options, Acts acts, IAntiforgery antiforgery)
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
            if (dossier.Length == 0)
            {
                var begun = Begin(data);
                if (!begun.TryValue(out dossier!))
                {
                    await Gates.Refuse(context, StatusCodes.Status422UnprocessableEntity, string.Join(' ', begun.Faults.Select(f => f.Say))).ConfigureAwait(false);
                    return;
                }
            }

            var from = context.Request.Query["from"].ToString();
            var added = await data.Add(dossier, name, context.Request.Body, Ways.Contains(from) ? from : Ways[0], context.RequestAborted).ConfigureAwait(false);
            context.Response.StatusCode = added.Ok ? StatusCodes.Status201Created : StatusCodes.Status422UnprocessableEntity;
            if (added.TryValue(out var file))
            {
                if (file.Already.Length == 0) acts.Did(dossier, "file " + name, [new EntryId(file.Entry)]);
                await context.Response.WriteAsJsonAsync(new { dossier, file.Sha256, file.Kind, file.Entry, Trouble = file.Trouble.Length > 0 && file.Kind.StartsWith("image/", StringComparison.Ordinal) ? BenchSentences.KeptAllTheSame(file.Trouble) : file.Trouble, file.Already }, context.RequestAborted).ConfigureAwait(false);
            }
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

    // How a file may say it came; anything else counts as dropped.
    private static readonly string[] Ways = ["drop", "camera", "paste", "recording"];

    // The first free of "device-1", "device-2" …; a title can be given later, and another window may be beginning one too.
    private static Outcome<string> Begin(IBenchData data)
    {
        for (var number = 1; number <= 10_000; number++)
        {
            var name = "device-" + number.ToString(CultureInfo.InvariantCulture);
            if (data.View(name, found => found) is not null) continue;
            var begun = data.Begin(name, "");
            if (begun.Ok) return name;
            // Not taken by another window meanwhile: then no other name would do either.
            if (data.View(name, found => found) is null) return Outcome<string>.Failed(begun.Faults);
        }

        return new Fault("dossier", "fewer than 10,000 dossiers", BenchSentences.NoRoomForDossier);
    }

    private static async Task<(int Status, string Say)> Refusal(HttpContext context, string dossier, IBenchData data, IAntiforgery antiforgery, long most)
    {
        if (!await antiforgery.IsRequestValidAsync(context).ConfigureAwait(false)) return (StatusCodes.Status400BadRequest, BenchSentences.NoToken);
        if (dossier.Length > 0 && data.View(dossier, found => found) is null) return (StatusCodes.Status404NotFound, BenchSentences.NoDossier);
        if (SafeName.Of(context.Request.Query["name"]) is null) return (StatusCodes.Status400BadRequest, BenchSentences.NoName);
        if (context.Request.ContentLength == 0) return (StatusCodes.Status422UnprocessableEntity, BenchSentences.EmptyFile);
        if (context.Request.ContentLength > most) return (StatusCodes.Status413PayloadTooLarge, BenchSentences.TooLarge(most));
        return (0, "");
    }
}
