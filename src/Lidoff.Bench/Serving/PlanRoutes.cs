using System.Text;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Rooms.Trace;
using Lidoff.Bench.Showing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Lidoff.Bench.Serving;

/// <summary>The drawings of the room Trace as files: <c>/dossiers/NAME/plans/supply.svg</c>, <c>blocks.svg</c>.</summary>
internal static class PlanRoutes
{
    // On paper a drawing has no page around it to colour it; ink and teal of the light page.
    private const string Style =
        "<style>.plan-box{fill:#FFFEFB;stroke:#1D2430;stroke-width:1.5}.plan-box.source{stroke:#0B6E6E;stroke-width:3}.plan-box.converter{stroke:#0B6E6E}.plan-box.bus,.plan-box.rail{stroke-dasharray:2 3}"
        + ".plan-line{stroke:#1D2430;stroke-width:1.5;fill:none}.plan-line.supply{stroke:#0B6E6E}.plan-line.bus{stroke-width:3}.plan-line.guess{stroke-dasharray:6 5;stroke:#B45309}"
        + "text{fill:#1D2430;font-family:sans-serif}.plan-name{font-weight:600}.plan-words,.plan-label{fill:#5A6472}</style>";

    public static void MapPlans(this IEndpointRouteBuilder routes) => routes.MapGet("/dossiers/{dossier}/plans/{name}.svg", (string dossier, string name, HttpContext context, IBenchData data) =>
    {
        if (data.View(dossier, PlansView.Of)?.Plans.FirstOrDefault(plan => plan.Name == name) is not { } found) return Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NotFound);
        var (width, height) = (Odds.Number(found.Width), Odds.Number(found.Height));
        context.Response.Headers.ContentSecurityPolicy = SafetyHeaders.FilePolicy;
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.ContentDisposition = "attachment; filename=" + found.Name + ".svg";
        context.Response.ContentType = "image/svg+xml";
        return context.Response.WriteAsync($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\">{Style}{found.Body}</svg>\n", Encoding.UTF8, context.RequestAborted);
    });
}
