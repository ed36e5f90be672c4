using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Rooms.Trace.Book;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Boards;
using Lidoff.Seeing.Pictures;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Lidoff.Bench.Serving;

/// <summary>
/// A page of the book, drawn flat on the board: <c>/dossiers/NAME/flat/HASH/STAMP.webp?left=HASH&amp;right=HASH&amp;glass=0</c>. The stamp
/// changes with the board, so browsers may keep what they got under it.
/// </summary>
internal static class FlatRoutes
{
    private const int HeightPx = 1280;

    public static void MapFlat(this IEndpointRouteBuilder routes) => routes.MapGet("/dossiers/{dossier}/flat/{sha256}/{stamp}.webp", async (string dossier, string sha256, string stamp, string? left, string? right, string? glass, HttpContext context, IBenchData data) =>
    {
        var drawn = FileRoutes.Hash(sha256) ? await Task.Run(() => Draw(data, dossier, sha256, stamp, left, right, glass == "1"), context.RequestAborted).ConfigureAwait(false) : null;
        if (drawn is not { } flat)
        {
            await Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NoPicture).ConfigureAwait(false);
            return;
        }

        if (!flat.TryValue(out var bytes))
        {
            await Gates.Refuse(context, StatusCodes.Status422UnprocessableEntity, string.Join(' ', flat.Faults.Select(fault => fault.Say))).ConfigureAwait(false);
            return;
        }

        context.Response.Headers.ContentSecurityPolicy = SafetyHeaders.FilePolicy;
        context.Response.Headers.CacheControl = "private, max-age=86400, immutable";
        context.Response.Headers.ContentDisposition = "inline";
        context.Response.ContentType = "image/webp";
        context.Response.ContentLength = bytes.Length;
        await context.Response.Body.WriteAsync(bytes, context.RequestAborted).ConfigureAwait(false);
    });

    // Only looking up holds the dossier; the drawing itself keeps no other page waiting.
    private static Outcome<byte[]>? Draw(IBenchData data, string dossier, string sha256, string stamp, string? left, string? right, bool glass)
    {
        var found = data.View(dossier, open =>
        {
            var page = BookView.Of(open, left, right, glass ? BookWay.Through : BookWay.Open).PageOf(sha256);
            return new Found(page?.Lay is { } lay && lay.Stamp == stamp && open.Picture(sha256, page.Picture.Name).TryValue(out var header)
                ? new Page(page, lay, header, open.Workspace.Files.PathOf(sha256)) : null);
        })?.Page;
        if (found is null) return null;
        var units = BookPage.Height / HeightPx;
        return FlatPicture.Draw(
            found.Path, found.Of.Picture.Name, found.Header, new("drawing", "picture", found.Lay.Matrix.After(new(units, 0, 0, 0, units, 0, 0, 0, 1))),
            (int)Math.Ceiling(found.Of.Width / units), HeightPx);
    }

    private sealed record Found(Page? Page);

    private sealed record Page(BookPage Of, BookLay Lay, PictureHeader Header, string Path);
}
