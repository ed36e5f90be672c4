using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;

namespace Lidoff.Bench.Hosting;

/// <summary>
/// The headers every answer carries. Scripts and styles come from files of ours alone; nothing inline runs, nothing is
/// fetched from outside the machine, nobody frames us, and no address of ours leaks to another site.
/// </summary>
internal static class SafetyHeaders
{
    /// <summary>What a stored file gets instead: even if a browser takes it for a page, nothing in it runs or loads.</summary>
    public const string FilePolicy = "default-src 'none'; sandbox; frame-ancestors 'none'";

    public static void UseSafetyHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = PagePolicy(context.Request.Host);
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(self), microphone=(self), geolocation=(), usb=(), serial=(), payment=()";
        return next(context);
    });

    private static string PagePolicy(HostString host)
    {
        // The host is checked only after this; a made-up one must not write policy.
        var live = host.Host is "127.0.0.1" or "localhost" && host.Port is { } port
            ? " ws://" + host.Host + ":" + port.ToString(System.Globalization.CultureInfo.InvariantCulture)
            : "";
        // Media: stored videos by their address, nothing else; a live camera and what is recorded of it need none.
        return "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; media-src 'self'; connect-src 'self'" + live
            + "; form-action 'self'; base-uri 'self'; frame-ancestors 'none'";
    }
}
