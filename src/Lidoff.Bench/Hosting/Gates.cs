using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Lidoff.Bench.Hosting;

/// <summary>
/// What every request passes before anything else sees it, in this order: headers for the answer, own host, own origin,
/// login, number of pages.
/// </summary>
internal static class Gates
{
    private const string Blazor = "/_blazor";

    /// <summary>Answers with a sentence. HTML is never used for these: there is nothing in them to escape.</summary>
    public static Task Refuse(HttpContext context, int status, string say)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        return context.Response.WriteAsync(say + "\n");
    }

    public static void UseOurFault(this IApplicationBuilder app, Action<string> log) => app.Use(async (context, next) =>
    {
        try
        {
            await next(context).ConfigureAwait(false);
        }
        catch (Exception e) when (!context.RequestAborted.IsCancellationRequested)
        {
            log(e.ToString());
            if (context.Response.HasStarted) throw;
            await Refuse(context, StatusCodes.Status500InternalServerError, BenchSentences.OurFault).ConfigureAwait(false);
        }
    });

    /// <summary>
    /// A page of another site can make the browser ask us under a name of its own that leads here; the Host header shows it.
    /// </summary>
    public static void UseOwnHost(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        var port = context.Connection.LocalPort.ToString(CultureInfo.InvariantCulture);
        var host = context.Request.Host.Value;
        return host == "127.0.0.1:" + port || host == "localhost:" + port
            ? next(context)
            : Refuse(context, StatusCodes.Status400BadRequest, BenchSentences.ForeignHost);
    });

    /// <summary>
    /// Anything that changes something, and the page's live connection, must come from our own page. Other ports of this
    /// machine count as the same site for cookies, so the cookie alone would not do. Reading from a foreign page (a picture
    /// of ours in it) is refused too where the browser says so.
    /// </summary>
    public static void UseOwnOrigin(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        var request = context.Request;
        var own = "http://" + request.Host.Value;
        var origin = request.Headers.Origin.ToString();
        var safe = HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);
        var live = request.Path.StartsWithSegments(Blazor, StringComparison.OrdinalIgnoreCase);
        var fine = origin.Length > 0 ? origin == own : safe && !(live && context.Request.Headers.Upgrade.Count > 0);
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        var navigates = request.Headers["Sec-Fetch-Mode"].ToString() == "navigate" && safe;
        if (site is "cross-site" or "same-site" && !navigates) fine = false;
        return fine ? next(context) : Refuse(context, StatusCodes.Status403Forbidden, BenchSentences.ForeignOrigin);
    });

    /// <summary>The key, once, makes the cookie; from then on the cookie.</summary>
    public static void UseLogin(this IApplicationBuilder app, LoginKey key, string start) => app.Use((context, next) =>
    {
        var request = context.Request;
        // Cookies do not know ports: two workbenches on one machine need two names.
        var cookie = "lidoff-" + context.Connection.LocalPort.ToString(CultureInfo.InvariantCulture);
        var holds = key.Holds(request.Cookies[cookie]);
        var asks = HttpMethods.IsGet(request.Method) && request.Path == "/" && request.Query.ContainsKey("key");
        if (asks && !holds && key.Use(request.Query["key"]))
        {
            context.Response.Cookies.Append(cookie, key.Session, new() { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });
            holds = true;
        }
        if (!holds) return Refuse(context, StatusCodes.Status401Unauthorized, BenchSentences.NoLogin);
        if (!asks) return next(context);

        // Away from the address with the key in it, so that it stays out of history and screenshots.
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Redirect(start);
        return Task.CompletedTask;
    });

    /// <summary>Each open page holds one connection for as long as it is open.</summary>
    public static void UsePageLimit(this IApplicationBuilder app, int most)
    {
        var open = 0;
        app.Use(async (context, next) =>
        {
            if (context.Request.Path != Blazor)
            {
                await next(context).ConfigureAwait(false);
                return;
            }
            try
            {
                if (Interlocked.Increment(ref open) > most) await Refuse(context, StatusCodes.Status503ServiceUnavailable, BenchSentences.TooManyPages(most)).ConfigureAwait(false);
                else await next(context).ConfigureAwait(false);
            }
            finally
            {
                Interlocked.Decrement(ref open);
            }
        });
    }
}
