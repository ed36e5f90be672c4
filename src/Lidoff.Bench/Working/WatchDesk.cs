using System.Collections.Concurrent;
using Lidoff.Bench.Data;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Watching;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Working;

/// <summary>
/// The watches of this workbench, one a dossier: starts and stops them and says how they stand. A file lands in its dossier like a
/// dropped one, with "watch" as its way in. Safe from any thread.
/// </summary>
/// <param name="data">Where files go.</param>
/// <param name="time">Clock of the looks.</param>
/// <param name="workspace">The workspace's own folder, which is never watched; empty where there is none.</param>
/// <param name="every">Time between two looks; a second when left out.</param>
public sealed class WatchDesk(IBenchData data, TimeProvider time, string workspace = "", TimeSpan? every = null) : IDisposable
{
    /// <summary>Most names and sentences that a state lists.</summary>
    public const int MostListed = 100;

    private readonly Lock gate = new();
    private readonly ConcurrentDictionary<(string Dossier, string Sha256), string> troubles = [];
    private readonly Dictionary<string, Watch> watches = new(StringComparer.Ordinal);
    private readonly List<Action<string, WatchEvent>> listeners = [];

    /// <summary>
    /// Watches a folder for a dossier, in place of the one watched for it before. The folder is an absolute path that is there; faults
    /// say what is wrong, and the earlier watch then goes on.
    /// </summary>
    public Outcome<WatchState> Start(string dossier, string folder)
    {
        if (data.View(dossier, open => open) is null) return StoreSentences.NoDossier(dossier, [.. data.Dossiers().Select(row => row.Name)]);
        if (!Path.IsPathFullyQualified(folder) || !Directory.Exists(folder)) return new Fault("folder", "the whole path of a folder that is there", WatchSentences.NoFolder(folder));
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        if (workspace.Length > 0 && Inside(full, workspace)) return new Fault("folder", "a folder outside the workspace", WatchSentences.OwnFolder(full));
        var watch = new Watch(full);
        lock (gate)
        {
            var before = Task.CompletedTask;
            if (watches.Remove(dossier, out var earlier))
            {
                earlier.Stop.Cancel();
                before = earlier.Looking;
            }

            watches[dossier] = watch;
            // One after the other: two at once could both find a file new and take it twice.
            watch.Looking = Task.Run(async () =>
            {
                await before.ConfigureAwait(false);
                await Run(dossier, watch).ConfigureAwait(false);
            });
        }

        return State(dossier);
    }

    /// <summary>Stops a dossier's watch; what was taken in stays.</summary>
    public void Stop(string dossier)
    {
        lock (gate)
        {
            if (!watches.TryGetValue(dossier, out var watch) || !watch.Running) return;
            watch.Stop.Cancel();
            (watch.Running, watch.End) = (false, WatchDeskSentences.Stopped);
        }
    }

    /// <summary>How a dossier's watch stands.</summary>
    public WatchState State(string dossier)
    {
        lock (gate)
        {
            if (!watches.TryGetValue(dossier, out var watch)) return WatchState.None;
            var say = !watch.Running ? watch.End : watch.Away ? WatchDeskSentences.Away : WatchDeskSentences.Watching(watch.TakenInAll, watch.Waiting);
            return new(watch.Running, watch.Folder, say, [.. watch.Taken], watch.TakenInAll, [.. watch.Refused]);
        }
    }

    /// <summary>
    /// Calls <paramref name="listener"/> with the dossier and each event, from the watch's thread, until the returned handle is
    /// disposed. A listener that throws (a page that is gone) is dropped.
    /// </summary>
    public IDisposable Listen(Action<string, WatchEvent> listener)
    {
        lock (gate) listeners.Add(listener);
        return new Listening(() => Drop(listener));
    }

    /// <summary>Stops every watch.</summary>
    public void Dispose()
    {
        Task[] looking;
        lock (gate)
        {
            foreach (var watch in watches.Values) watch.Stop.Cancel();
            looking = [.. watches.Values.Select(watch => watch.Looking)];
        }

        // A file that is being taken in is finished or dropped before the store under it closes.
        Task.WhenAll(looking).Wait(TimeSpan.FromSeconds(10));
    }

    private static bool Inside(string folder, string home)
    {
        var own = Path.TrimEndingDirectorySeparator(Path.GetFullPath(home));
        return folder == own || folder.StartsWith(own + Path.DirectorySeparatorChar, StringComparison.Ordinal);
    }

    private async Task Run(string dossier, Watch watch)
    {
        var folder = new FolderWatch(watch.Folder, hash => Has(dossier, hash), (content, name, stop) => Take(dossier, content, name, stop));
        try
        {
            while (!watch.Stop.IsCancellationRequested)
            {
                var events = await folder.Look(watch.Stop.Token).ConfigureAwait(false);
                bool waits;
                lock (gate) (waits, watch.Waiting) = (watch.Waiting != folder.Waiting, folder.Waiting);
                foreach (var each in events) Tell(dossier, watch, each);
                if (waits && events.Count == 0) Tell(dossier, watch, new(WatchSight.Waiting, "", "", State(dossier).Say));
                await Task.Delay(every ?? TimeSpan.FromSeconds(1), time, watch.Stop.Token).ConfigureAwait(false);
            }
        }
        catch (OperationCanceledException)
        {
            // Stopped by Stop, by another Start or with the program; the state says which.
        }
        catch (Exception trouble)
        {
            // What nobody foresaw ends this watch with a sentence, never the workbench.
            lock (gate) (watch.Running, watch.End) = (false, WatchDeskSentences.Broke(trouble.Message));
        }
    }

    private bool Has(string dossier, string hash) =>
        data.View(dossier, open => open.Session.View.Live<FileAdded>().Any(file => file.Value.Sha256 == hash) ? hash : "") is { Length: > 0 };

    private async Task<Outcome<string>> Take(string dossier, Stream content, string name, CancellationToken stop) =>
        (await data.Add(dossier, name, content, "watch", stop).ConfigureAwait(false)).Then(added =>
        {
            if (added.Trouble.Length > 0) troubles[(dossier, added.Sha256)] = added.Trouble;
            return added.Sha256;
        });

    private void Tell(string dossier, Watch watch, WatchEvent each)
    {
        // What is wrong with a picture that was taken in; it is kept all the same.
        var broken = each.Sight == WatchSight.Taken && troubles.TryRemove((dossier, each.Sha256), out var trouble) ? trouble : "";
        Action<string, WatchEvent>[] now;
        lock (gate)
        {
            now = [.. listeners];
            watch.Away = each.Sight == WatchSight.Gone || (watch.Away && each.Sight != WatchSight.Back);
            if (each.Sight == WatchSight.Taken)
            {
                watch.TakenInAll++;
                Put(watch.Taken, each.Name);
            }

            if (each.Sight == WatchSight.Refused) Put(watch.Refused, each.Say);
            if (broken.Length > 0) Put(watch.Refused, broken);
        }

        var said = broken.Length > 0 ? each with { Say = each.Say + " " + broken } : each;
        foreach (var listener in now)
        {
            try
            {
                listener(dossier, said);
            }
            catch (Exception)
            {
                Drop(listener);
            }
        }
    }

    private static void Put(List<string> list, string text)
    {
        list.Insert(0, text);
        if (list.Count > MostListed) list.RemoveAt(MostListed);
    }

    private void Drop(Action<string, WatchEvent> listener)
    {
        lock (gate) listeners.Remove(listener);
    }

    private sealed class Watch(string folder)
    {
        public string Folder => folder;

        // Never disposed: a stopped watch's thread may still look at it, and without a timer it holds nothing.
        public CancellationTokenSource Stop { get; } = new();

        public Task Looking { get; set; } = Task.CompletedTask;

        public List<string> Taken { get; } = [];

        public List<string> Refused { get; } = [];

        public int TakenInAll { get; set; }

        public int Waiting { get; set; }

        public bool Away { get; set; }

        public bool Running { get; set; } = true;

        public string End { get; set; } = "";
    }

    private sealed class Listening(Action drop) : IDisposable
    {
        public void Dispose() => drop();
    }
}
