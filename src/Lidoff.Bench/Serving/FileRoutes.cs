using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Net.Http.Headers;

namespace Lidoff.Bench.Serving;

/// <summary>Stored files over plain HTTP, whole or in ranges, so that no large file passes through the page's connection.</summary>
internal static class FileRoutes
{
    // Shown in the page by the browser's own decoders; everything else is saved, never opened in place.
    private static readonly string[] ShownInPlace = ["image/jpeg", "image/png", "image/gif", "image/webp", "image/avif"];

    public static void MapFiles(this IEndpointRouteBuilder routes) => routes.MapGet("/files/{sha256}", (string sha256, HttpContext context, IBenchData data) =>
    {
        if (!Hash(sha256) || data.File(sha256) is not { } file) return Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NoFile);
        var response = context.Response;
        response.Headers.ContentSecurityPolicy = SafetyHeaders.FilePolicy;
        response.Headers.CacheControl = "private, no-cache";
        var disposition = new ContentDispositionHeaderValue(ShownInPlace.Contains(file.MediaType) ? "inline" : "attachment");
        disposition.SetHttpFileName(Showing.Shown.Of(file.FileName));
        response.Headers.ContentDisposition = disposition.ToString();
        var stream = Results.Stream(
            file.Open(),
            file.MediaType,
            entityTag: new('"' + sha256 + '"'),
            enableRangeProcessing: true);
        return stream.ExecuteAsync(context);
    });

    /// <summary>True for 64 lower-case hex digits, the only names there are.</summary>
    public static bool Hash(string text) => Evidence.Entries.EntryId.Fits(text);
}
