using System.Text;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;
using Lidoff.Telling.Reporting;
using Lidoff.Telling.Writing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Lidoff.Bench.Serving;

/// <summary>The report as it would go out today, its pictures, and reports that were made.</summary>
internal static class ReportRoutes
{
    /// <summary>
    /// What the report may do: its own style, pictures of ours, nothing else. Same origin, since the pictures only go to pages of ours;
    /// scripts and forms stay shut.
    /// </summary>
    private const string Policy = "default-src 'none'; img-src 'self' data:; style-src 'unsafe-inline'; form-action 'none'; base-uri 'none'; frame-ancestors 'none'; sandbox allow-same-origin";

    private const int PictureSide = 1280;

    private const int NameLength = 12;

    public static void MapReports(this IEndpointRouteBuilder routes)
    {
        routes.MapGet("/dossiers/{dossier}/tell/report", async (string dossier, HttpContext context, IBenchData data) =>
        {
            var html = await Task.Run(() => data.View(dossier, Written)).ConfigureAwait(false);
            if (html is null)
            {
                await Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NoDossier).ConfigureAwait(false);
                return;
            }

            context.Response.Headers.ContentSecurityPolicy = Policy;
            context.Response.Headers.CacheControl = "no-store";
            context.Response.ContentType = "text/html; charset=utf-8";
            await context.Response.WriteAsync(html, Encoding.UTF8, context.RequestAborted).ConfigureAwait(false);
        });
        routes.MapGet("/dossiers/{dossier}/tell/pictures/{file}", async (string dossier, string file, HttpContext context, IBenchData data, BenchOptions options) =>
        {
            var sha256 = file.Length > NameLength ? await Task.Run(() => data.View(dossier, open => Picture(open, file[..NameLength]))).ConfigureAwait(false) : null;
            sha256 ??= "";
            await TileRoutes.Send(context, sha256 .Length > 0, options.Tiles, tiles => tiles.Thumbnail(sha256, PictureSide, context.RequestAborted)).ConfigureAwait(false);
        });
        routes.MapGet("/dossiers/{dossier}/tell/reports/{number:int:min(1)}", (string dossier, int number, HttpContext context, ReportShelf shelf) =>
        {
            if (shelf.Find(dossier, number) is not { } made || !File.Exists(made.Path)) return Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NotFound);
            context.Response.Headers.ContentSecurityPolicy = SafetyHeaders.FilePolicy;
            context.Response.Headers.CacheControl = "private, no-store";
            return Results.File(made.Path, "application/zip", dossier + "-report.zip").ExecuteAsync(context);
        });
    }

    private static string Written(OpenDossier open) =>
        HtmlWriter.Write(ReportBuilder.Build(open.Session.View, open.Model, ReportFolder.Shown(open, _ => { }), OpenDossier.Program));

    private static string Picture(OpenDossier open, string start) =>
        open.Session.View.Live<FileAdded>().Select(file => file.Value.Sha256).FirstOrDefault(sha256 => sha256.StartsWith(start, StringComparison.Ordinal)) ?? "";
}
