using Lidoff.Bench.Data;

namespace Lidoff.Bench.Hosting;

/// <summary>
/// Tells open pages when the store has moved, whoever moved it. It looks only while somebody listens. Databases tell other
/// processes nothing, so looking is the one way that always works.
/// </summary>
internal sealed class HeadsWatch(BenchOptions options) : IDisposable
{
    private readonly Lock gate = new();
    private readonly Lock one = new();
    private readonly List<Action> listeners = [];
    private ITimer? timer;
    private string heads = "";
    private int asked;
    private bool over;

    private IBenchData Data => options.Data;

    /// <summary>Calls back, from a thread of its own, each time the heads differ from those seen last.</summary>
    public IDisposable Listen(Action moved)
    {
        lock (gate)
        {
            if (listeners.Count == 0) heads = Data.Heads();
            listeners.Add(moved);
            timer ??= options.Time.CreateTimer(_ => Look(), null, options.Look, options.Look);
        }
        return new Listening(this, moved);
    }

    /// <summary>Looks now, from a thread of its own: this process has just stored something, and its pages should not wait for the clock.</summary>
    public void Poke() => _ = Task.Run(Look);

    public void Dispose()
    {
        lock (gate)
        {
            timer?.Dispose();
            timer = null;
            listeners.Clear();
            over = true;
        }

        // A look that has begun ends before the store behind it is let go.
        lock (one)
        {
        }
    }

    private void Look()
    {
        // One look at a time: on a slow disk they must not pile up. Whoever asks meanwhile is served by one more, since what they
        // have just stored may be younger than what the running look has read.
        if (Interlocked.Increment(ref asked) > 1) return;
        do
        {
            Volatile.Write(ref asked, 1);
            lock (one) LookOnce();
        }
        while (Interlocked.CompareExchange(ref asked, 0, 1) != 1);
    }

    private void LookOnce()
    {
        lock (gate)
        {
            if (over) return;
        }

        try
        {
            var now = Data.Heads();
            Action[] tell;
            lock (gate)
            {
                if (now == heads) return;
                heads = now;
                tell = [.. listeners];
            }
            foreach (var moved in tell) moved();
        }
        catch (Exception e)
        {
            // A store that is busy or gone for a moment: say it, look again.
            options.Log(e.Message);
        }
    }

    private void Drop(Action moved)
    {
        lock (gate)
        {
            listeners.Remove(moved);
            if (listeners.Count > 0) return;
            timer?.Dispose();
            timer = null;
        }
    }

    private sealed class Listening(HeadsWatch watch, Action moved) : IDisposable
    {
        public void Dispose() => watch.Drop(moved);
    }
}
