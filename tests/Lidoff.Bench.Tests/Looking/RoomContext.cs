using Bunit;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Reading.Networks;
using Microsoft.Extensions.DependencyInjection;

namespace Lidoff.Bench.Tests.Looking;

/// <summary>What a room's page needs to be drawn and worked in a test: a bench over a real workspace, and one window's hand.</summary>
public abstract class RoomContext : BunitContext
{
    protected RoomContext()
    {
        var options = new BenchOptions { Data = Bench, Program = "Lidoff.Bench.Tests", Unguessable = b => b.Fill(1), Look = TimeSpan.FromMilliseconds(5), Log = _ => { } };
        Services.AddSingleton(options);
        Services.AddSingleton<IBenchData>(Bench);
        var watch = new HeadsWatch(options);
        Services.AddSingleton(watch);
        Services.AddSingleton(new Acts());
        Services.AddSingleton(new WatchDesk(Bench, TimeProvider.System));
        Services.AddSingleton(new Presenter());
        Services.AddSingleton(new PictureSeats());
        Services.AddSingleton(provider => new PictureWorths(provider.GetRequiredService<PictureSeats>()));
        Services.AddSingleton(provider => new LookDesk(Bench, provider.GetRequiredService<Acts>(), provider.GetRequiredService<PictureSeats>(), watch.Poke, _ => { }));
        Services.AddSingleton(new Selection());
        Services.AddSingleton(new JobDesk(TimeProvider.System));
        Services.AddSingleton(provider => new ComposeDesk(
            Bench, provider.GetRequiredService<JobDesk>(), provider.GetRequiredService<Acts>(), watch, sha256 => Bench.Workspace.Files.Has(sha256) ? Bench.Workspace.Files.PathOf(sha256) : null, (order, report) => Make(order, report)));
        Services.AddSingleton(provider => new LayDesk(
            Bench, provider.GetRequiredService<JobDesk>(), provider.GetRequiredService<Acts>(), watch, provider.GetRequiredService<PictureSeats>(), sha256 => Bench.Workspace.Files.Has(sha256) ? Bench.Workspace.Files.PathOf(sha256) : null));
        Services.AddSingleton(provider => new ReadDesk(
            Bench, provider.GetRequiredService<JobDesk>(), provider.GetRequiredService<Acts>(), watch, provider.GetRequiredService<PictureSeats>(), () => Networks()));
        Services.AddSingleton(provider => new PartsDesk(Bench, provider.GetRequiredService<JobDesk>(), provider.GetRequiredService<PictureSeats>(), provider.GetRequiredService<ReadDesk>()));
        Services.AddSingleton<ReportShelf>();
        Services.AddSingleton(provider => new Hand(Bench, provider.GetRequiredService<Acts>(), watch));
        SetRendererInfo(new("Server", isInteractive: true));
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    /// <summary>Where everything is stored.</summary>
    public FakeBench Bench { get; } = new();

    /// <summary>What making a picture of pictures comes to here; a test says so.</summary>
    protected Func<ComposeOrder, IJobReport, Outcome<Composition>> Make { get; set; } = (_, _) => throw new InvalidOperationException("nothing is made in this test");

    /// <summary>The networks that read marks here. Default: those that come with the program.</summary>
    protected Func<IReadingNetworks> Networks { get; set; } = () => new OnnxNetworks(OnnxNetworks.FolderOf(AppContext.BaseDirectory));

    /// <summary>The window's hand.</summary>
    public Hand Hand => Services.GetRequiredService<Hand>();

    /// <summary>Live entries of a sort in the dossier "d", as stored.</summary>
    public IReadOnlyList<T> Stored<T>()
        where T : class => Bench.View("d", dossier => dossier.Session.View.Live<T>().Select(each => each.Value).ToList())!;

    /// <summary>Does something to an element as the page stands at that moment: nothing can be redrawn between finding it and acting on it.</summary>
    protected static void On<T>(IRenderedComponent<T> page, string selector, Action<AngleSharp.Dom.IElement> act)
        where T : Microsoft.AspNetCore.Components.IComponent => page.InvokeAsync(() => act(page.Find(selector))).GetAwaiter().GetResult();

    /// <summary>The same for whatever needs more than one selector to be found.</summary>
    protected static void Act<T>(IRenderedComponent<T> page, Action act)
        where T : Microsoft.AspNetCore.Components.IComponent => page.InvokeAsync(act).GetAwaiter().GetResult();

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing) Bench.Dispose();
    }
}
