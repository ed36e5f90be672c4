using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Microsoft.AspNetCore.Components;

namespace Lidoff.Bench.Components;

/// <summary>A page that shows one value and follows the store: it loads, and loads again when anything was appended.</summary>
/// <typeparam name="T">What it shows; an equal value redraws nothing.</typeparam>
public abstract class LivePage<T> : ComponentBase, IDisposable
    where T : class
{
    private IDisposable? listening;
    private bool loading;
    private bool again;
    private bool gone;

    /// <summary>What the page shows; null before it is loaded and when there is none.</summary>
    protected T? Shown { get; private set; }

    /// <summary>True once the first load is over.</summary>
    protected bool Loaded { get; private set; }

    /// <summary>True while the page follows the store without being loaded again.</summary>
    protected bool Live => listening is not null;

    /// <summary>Where the page's values come from.</summary>
    [Inject]
    protected IBenchData Data { get; private set; } = null!;

    [Inject]
    private HeadsWatch Watch { get; set; } = null!;

    /// <summary>Fetches the value; runs on a thread of its own, but for the first value of a live page.</summary>
    protected abstract T? Load();

    /// <summary>Whether two values look the same.</summary>
    protected virtual bool Same(T? before, T? now) => Equals(before, now);

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        // A page sent once as plain HTML has nobody to tell; only its live twin listens.
        if (RendererInfo.IsInteractive) listening = Watch.Listen(() => _ = InvokeAsync(Follow));
    }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => Follow(here: true);

    /// <inheritdoc/>
    public virtual void Dispose()
    {
        gone = true;
        listening?.Dispose();
        GC.SuppressFinalize(this);
    }

    /// <summary>Loads again now, because something else than the store moved.</summary>
    protected Task Again() => Follow(here: true);

    private Task Follow() => Follow(here: false);

    // Somebody who goes to the next page waits for its value anyway: made here, it is drawn at once with all that follows from the same key
    // (the drawer, the frame), where each drawn alone would be painted alone. While the store is at work, typing must not wait for it.
    private async Task Follow(bool here)
    {
        // Moves that come while it loads are one further load, not a queue of them.
        again = true;
        if (loading) return;
        loading = true;
        try
        {
            while (again && !gone)
            {
                again = false;
                // The first value of a live page is fetched before anything of it is drawn: until then the page sent as plain HTML, or the page
                // one came from, stays in sight instead of an empty one.
                var now = RendererInfo.IsInteractive && (!Loaded || (here && Data.Idle)) ? Load() : await Task.Run(Load);
                here = false;
                var same = Loaded && Same(Shown, now);
                (Shown, Loaded) = (now, true);
                if (!same && !gone) StateHasChanged();
            }
        }
        finally
        {
            loading = false;
        }
    }
}
