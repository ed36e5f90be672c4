using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Lidoff.Bench.Serving;

/// <summary>Thumbnails and tiles. A picture never changes under its hash, so browsers may keep them for good.</summary>
internal static class TileRoutes
{
    /// <summary>Longer sides a thumbnail may have: few, so that nobody can fill the cache with sizes.</summary>
    private static readonly int[] Sides = [160, 320, 640, 1280];

    public static void MapTiles(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/thumbs/{sha256}/{side:int}", (string sha256, int side, HttpContext context, BenchOptions options) =>
            Send(context, FileRoutes.Hash(sha256) && Sides.Contains(side), options.Tiles, t => t.Thumbnail(sha256, side, context.RequestAborted)));
        routes.MapGet("/tiles/{sha256}/{level:int:min(0)}/{x:int:min(0)}/{y:int:min(0)}", (string sha256, int level, int x, int y, HttpContext context, BenchOptions options) =>
            Send(context, FileRoutes.Hash(sha256), options.Tiles, t => t.Tile(sha256, level, x, y, context.RequestAborted)));
        routes.MapGet("/tiles/{sha256}", async (string sha256, HttpContext context, BenchOptions options) =>
        {
            var levels = FileRoutes.Hash(sha256) && options.Tiles is { } tiles ? await tiles.Levels(sha256, context.RequestAborted).ConfigureAwait(false) : null;
            // Stopped before they were made: the picture is there all the same, and nothing is wrong.
            if (levels is null && FileRoutes.Hash(sha256) && options.PathOf(sha256) is not null) context.Response.StatusCode = StatusCodes.Status204NoContent;
            else if (levels is null) await Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NoPicture).ConfigureAwait(false);
            else await context.Response.WriteAsJsonAsync(levels, context.RequestAborted).ConfigureAwait(false);
        });
    }

    internal static async Task Send(HttpContext context, bool sane, ITileSource? tiles, Func<ITileSource, Task<PictureBytes?>> ask)
    {
        var picture = sane && tiles is not null ? await ask(tiles).ConfigureAwait(false) : null;
        if (picture is null)
        {
            await Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NoPicture).ConfigureAwait(false);
            return;
        }
        context.Response.Headers.ContentSecurityPolicy = SafetyHeaders.FilePolicy;
        context.Response.Headers.CacheControl = "private, max-age=31536000, immutable";
        context.Response.Headers.ContentDisposition = "inline";
        context.Response.ContentType = picture.MediaType;
        context.Response.ContentLength = picture.Bytes.Length;
        await context.Response.Body.WriteAsync(picture.Bytes, context.RequestAborted).ConfigureAwait(false);
    }
}
