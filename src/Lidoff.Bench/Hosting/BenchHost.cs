using System.Globalization;
using System.Net;
using Lidoff.Bench.Components;
using Lidoff.Bench.Data;
using Lidoff.Bench.Serving;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Vision;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;

namespace Lidoff.Bench.Hosting;

/// <summary>The workbench as a web application on 127.0.0.1.</summary>
public static class BenchHost
{
    /// <summary>Header that carries the antiforgery token of an upload.</summary>
    public const string AntiforgeryHeader = "X-Lidoff-Token";

    /// <summary>
    /// The application, not yet started. It reads no settings file and no environment variable: none of them may open a
    /// further address or another folder.
    /// </summary>
    public static WebApplication Build(BenchOptions options)
    {
        Guard.That(options.Port is >= 0 and <= 65535, "a port from 0 to 65535");
        Guard.That(options.Start.StartsWith('/') && !options.Start.StartsWith("//", StringComparison.Ordinal), "a path on this host to start at");
        var builder = WebApplication.CreateEmptyBuilder(new()
        {
            ApplicationName = options.Program,
            ContentRootPath = options.ContentRoot,
            EnvironmentName = Environments.Production,
            WebRootPath = "wwwroot",
        });
        builder.WebHost.UseKestrelCore().UseStaticWebAssets().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 64 * 1024;
            kestrel.Limits.MaxConcurrentConnections = 16 + (8 * options.MostPages);
            kestrel.Limits.MaxConcurrentUpgradedConnections = options.MostPages;
            kestrel.Listen(IPAddress.Loopback, options.Port);
        });
        AddServices(builder.Services, options);
        var app = builder.Build();
        app.UseSafetyHeaders();
        app.UseOurFault(options.Log);
        app.UseOwnHost();
        app.UseOwnOrigin();
        app.UseLogin(app.Services.GetRequiredService<LoginKey>(), options.Start);
        app.UsePageLimit(options.MostPages);
        app.UseRouting();
        app.UseAntiforgery();
        app.MapStaticAssets(Path.Combine(options.ContentRoot, options.Program + ".staticwebassets.endpoints.json"));
        app.MapFiles();
        app.MapTiles();
        app.MapCrops();
        app.MapLabelled();
        app.MapFlat();
        app.MapDiagrams();
        app.MapUploads();
        app.MapRecordings();
        // Browsers ask for it beside pages that name no icon, such as the report's preview.
        app.MapGet("/favicon.ico", () => Results.NoContent());
        app.MapReports();
        // Our own policy header stands already; the framework would add a second one.
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
        app.MapFallback(context => Gates.Refuse(context, StatusCodes.Status404NotFound, BenchSentences.NotFound));
        return app;
    }

    /// <summary>The address with the key, good for one login; only once the application has started.</summary>
    public static string Address(WebApplication app)
    {
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses;
        Guard.That(addresses is { Count: 1 }, "a started workbench with one address");
        var port = new Uri(addresses.First()).Port.ToString(CultureInfo.InvariantCulture);
        return "http://127.0.0.1:" + port + "/?key=" + app.Services.GetRequiredService<LoginKey>().Key;
    }

    /// <summary>
    /// Runs the workbench until <paramref name="stop"/>. <paramref name="ready"/> gets the address once the page answers.
    /// A port that is taken comes back as a fault.
    /// </summary>
    public static async Task<Outcome<string>> Run(BenchOptions options, Action<string> ready, CancellationToken stop)
    {
        await using var app = Build(options);
        try
        {
            await app.StartAsync(stop).ConfigureAwait(false);
        }
        catch (IOException e)
        {
            var port = options.Port.ToString(CultureInfo.InvariantCulture);
            return new Fault("--port", "a free port", BenchSentences.PortTaken(port, e.Message));
        }
        var address = Address(app);
        ready(address);
        try
        {
            await Task.Delay(Timeout.Infinite, stop).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
        }
        await app.StopAsync(CancellationToken.None).ConfigureAwait(false);
        return address;
    }

    /// <summary>The line that <c>bench</c> and <c>demo</c> print on stdout.</summary>
    public static string ReadyLine(string address) => BenchSentences.Ready(address);

    private static void AddServices(IServiceCollection services, BenchOptions options)
    {
        services.AddLogging(logging => logging
            .AddProvider(new LineLogger(options.Log))
            // Its one warning is that keys are not encrypted at rest; ours never rest.
            .AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error)
            // A start that fails is told once, as a sentence.
            .AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None));
        services.AddSingleton<IHostLifetime, QuietLifetime>();
        services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(2));
        services.AddSingleton(options);
        services.AddSingleton<IBenchData>(options.Data);
        services.AddSingleton(new LoginKey(options.Unguessable));
        services.AddSingleton<HeadsWatch>();
        services.AddSingleton(options.Jobs ?? new JobDesk(options.Time));
        services.AddSingleton(options.Watches ?? new WatchDesk(options.Data, options.Time));
        services.AddSingleton<Acts>();
        services.AddSingleton(provider => new ComposeDesk(
            options.Data, provider.GetRequiredService<JobDesk>(), provider.GetRequiredService<Acts>(), provider.GetRequiredService<HeadsWatch>(), options.PathOf,
            new Composer(VisionLibrary.OfThisMachine).Make));
        services.AddSingleton(provider => new LookDesk(options.Data, provider.GetRequiredService<Acts>(), provider.GetRequiredService<PictureSeats>(), provider.GetRequiredService<HeadsWatch>().Poke, options.Log));
        services.AddSingleton(provider => new LayDesk(
            options.Data, provider.GetRequiredService<JobDesk>(), provider.GetRequiredService<Acts>(), provider.GetRequiredService<HeadsWatch>(), provider.GetRequiredService<PictureSeats>(), options.PathOf));
        services.AddSingleton(provider => new ReadDesk(
            options.Data, provider.GetRequiredService<JobDesk>(), provider.GetRequiredService<Acts>(), provider.GetRequiredService<HeadsWatch>(), provider.GetRequiredService<PictureSeats>(), options.Networks));
        services.AddSingleton(provider => new PartsDesk(options.Data, provider.GetRequiredService<JobDesk>(), provider.GetRequiredService<PictureSeats>(), provider.GetRequiredService<ReadDesk>()));
        services.AddSingleton<Presenter>();
        services.AddSingleton(_ => options.Seats ?? new PictureSeats());
        services.AddSingleton<PictureWorths>();
        services.AddSingleton<ReportShelf>();
        services.AddScoped(provider => new Hand(options.Data, provider.GetRequiredService<Acts>(), provider.GetRequiredService<HeadsWatch>()));
        services.AddScoped<Selection>();
        services.AddSingleton(options.Time);
        services.AddRouting();
        // Keys for this start alone, in memory: nothing is written to the user's folders.
        services.AddDataProtection().UseEphemeralDataProtectionProvider();
        services.AddAntiforgery(antiforgery =>
        {
            antiforgery.HeaderName = AntiforgeryHeader;
            antiforgery.SuppressXFrameOptionsHeader = true;
            antiforgery.Cookie.Name = "lidoff-form";
            antiforgery.Cookie.HttpOnly = true;
            antiforgery.Cookie.SameSite = SameSiteMode.Strict;
        });
        services.AddRazorComponents().AddInteractiveServerComponents(circuits =>
        {
            circuits.DetailedErrors = false;
            circuits.DisconnectedCircuitMaxRetained = options.MostPages;
            circuits.DisconnectedCircuitRetentionPeriod = TimeSpan.FromMinutes(3);
        })
            // A table of touches that is pasted into a field comes as one message; the framework's 32 kB would cut the page off from it.
            .AddHubOptions(hub => hub.MaximumReceiveMessageSize = 1 << 20);
    }
}
