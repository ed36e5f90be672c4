using System.Text;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Rooms.Trace;
using Lidoff.Bench.Showing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Lidoff.Bench.Serving;

/// <summary>The drawings of the room Trace as files: <c>/dossiers/NAME/diagrams/supply.svg</c>, <c>blocks.svg</c>.</summary>
internal static class DiagramRoutes
{
    // On paper a drawing has no page around it to colour it; ink and teal of the light page.
    private const string Style =
        "<style>.diagram-box{fill:#FFFEFB;stroke:#1D2430;stroke-width:1.5}.diagram-box.source{stroke:#0B6E6E;stroke-width:3}.diagram-box.converter{stroke:#0B6E6E}.diagram-box.bus,.diagram-box.rail{stroke-dasharray:2 3}"
        + ".diagram-line{stroke:#1D2430;stroke-width:1.5;fill:none}.diagram-line.supply{stroke:#0B6E6E}.diagram-line.bus{stroke-width:3}.diagram-line.guess{stroke-dasharray:6 5;stroke:#B45309}"
        + "text{fill:#1D2430;font-family:sans-serif}.diagram-name{font-weight:600}.diagram-words,.diagram-label{fill:#5A6472}</style>";

    public static void MapDiagrams(this IEndpointRouteBuilder routes) => routes.MapGet("/dossiers/{dossier}/diagrams/{name}.svg", (string dossier, string name, HttpContext context, IBenchData data) =>
    {
        if (data.View(dossier, DiagramsView.Of)?.Diagrams.FirstOrDefault(diagram => diagram.Name == name) is not { } found) return Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NotFound);
        var (width, height) = (Odds.Number(found.Width), Odds.Number(found.Height));
        context.Response.Headers.ContentSecurityPolicy = SafetyHeaders.FilePolicy;
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.ContentDisposition = "attachment; filename=" + found.Name + ".svg";
        context.Response.ContentType = "image/svg+xml";
        return context.Response.WriteAsync($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\">{Style}{found.Body}</svg>\n", Encoding.UTF8, context.RequestAborted);
    });
}
