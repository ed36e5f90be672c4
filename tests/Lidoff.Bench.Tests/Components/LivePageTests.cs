using Bunit;
using Lidoff.Bench.Components.Pages;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Bench.Rooms.Name;
using Lidoff.Bench.Tests.Looking;
using Lidoff.Bench.Working;
using Lidoff.Evidence.Working;
using Microsoft.Extensions.DependencyInjection;

namespace Lidoff.Bench.Tests.Components;

public sealed class LivePageTests : BunitContext
{
    private readonly FakeBench bench = new();
    private readonly List<string> logged = [];

    public LivePageTests()
    {
        var options = new BenchOptions
        {
            Data = bench,
            Program = "Lidoff.Bench.Tests",
            Unguessable = b => b.Fill(1),
            Look = TimeSpan.FromMilliseconds(5),
            Log = line => { lock (logged) logged.Add(line); },
        };
        Services.AddSingleton(options);
        Services.AddSingleton<IBenchData>(bench);
        var watch = new HeadsWatch(options);
        Services.AddSingleton(watch);
        Services.AddSingleton(new Hand(bench, new(), watch));
        Services.AddSingleton(new Selection());
        var jobs = new JobDesk(TimeProvider.System);
        Services.AddSingleton(jobs);
        Services.AddSingleton(new ReadDesk(bench, jobs, new(), watch, new(), options.Networks));
        SetRendererInfo(new("Server", isInteractive: true));
        JSInterop.Mode = JSRuntimeMode.Loose;
    }

    [Fact]
    public void An_entry_appended_elsewhere_appears_without_a_reload()
    {
        bench.Set("brindle", "");
        var page = Render<NamePage>(p => p.Add(d => d.Name, "brindle"));
        page.WaitForAssertion(() => Assert.Contains("No spot yet.", page.Markup, StringComparison.Ordinal));
        bench.Set("brindle", "", """{"kind":"mark","spot":"U1","lines":["N52832","QFAA?0"]}""");
        page.WaitForAssertion(() => Assert.Contains("nRF52832", page.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
    }

    [Fact]
    public void A_new_dossier_appears_in_the_list()
    {
        var page = Render<DossiersPage>();
        page.WaitForAssertion(() => Assert.Contains("No dossier yet.", page.Markup, StringComparison.Ordinal));
        bench.Set("first", "");
        page.WaitForAssertion(() => Assert.Contains("/dossiers/first", page.Markup, StringComparison.Ordinal));
    }

    [Fact]
    public void A_store_that_cannot_be_looked_at_for_a_moment_is_said_and_looked_at_again()
    {
        bench.Set("brindle", "");
        var page = Render<DossierPage>(p => p.Add(d => d.Name, "brindle"));
        page.WaitForAssertion(() => Assert.Contains("1 entry", page.Markup, StringComparison.Ordinal));
        // Its tables load beside it; what breaks in this test is looking again, not the first look.
        Still(page);
        bench.Breaks = "database is locked";
        Assert.True(SpinWait.SpinUntil(() => { lock (logged) return logged.Contains("database is locked"); }, TimeSpan.FromSeconds(10)));
        bench.Breaks = null;
        bench.Set("brindle", "", """{"kind":"spot","spot":"U1"}""");
        page.WaitForAssertion(() => Assert.Contains("2 entries", page.Markup, StringComparison.Ordinal));
    }

    [Fact]
    public void A_move_that_changes_nothing_here_redraws_nothing()
    {
        bench.Set("brindle", "");
        var page = Render<DossierPage>(p => p.Add(d => d.Name, "brindle"));
        page.WaitForAssertion(() => Assert.Contains("1 entry", page.Markup, StringComparison.Ordinal));
        // Its tables load beside it; what is counted begins when all of it is still.
        var drawn = Still(page);
        // The list beside it tells that the move was seen.
        var list = Render<DossiersPage>();
        list.WaitForAssertion(() => Assert.Contains("/dossiers/brindle", list.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        bench.Set("other", "");
        list.WaitForAssertion(() => Assert.Contains("/dossiers/other", list.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        Assert.Equal(drawn, page.RenderCount);
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing) bench.Dispose();
    }

    // Waits until nothing was drawn for half a second, and hands back how often it was until then.
    private static int Still(IRenderedComponent<DossierPage> page)
    {
        int drawn;
        do
        {
            drawn = page.RenderCount;
            Thread.Sleep(500);
        }
        while (drawn != page.RenderCount);
        return drawn;
    }
}
