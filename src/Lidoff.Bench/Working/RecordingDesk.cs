using System.Globalization;
using System.Text.Json;
using Lidoff.Bench.Data;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;

namespace Lidoff.Bench.Working;

/// <summary>
/// Recordings under way. Every piece is on the disk before it is acknowledged, in a file of its own beside what is known of it, so that
/// what came is kept whatever ends it: the browser, the connection, or this program. One that is over becomes a file of its dossier
/// with a <c>recording</c> entry; one that a killed program left does so at the next start. Safe from any thread.
/// </summary>
/// <param name="data">Where recordings go in the end.</param>
/// <param name="folder">Folder for those under way, in the workspace.</param>
/// <param name="time">Clock.</param>
/// <param name="mostBytes">Most bytes of one recording; 2 GiB, some half an hour, when left out.</param>
public sealed class RecordingDesk(IBenchData data, string folder, TimeProvider time, long mostBytes = 2L << 30) : IDisposable
{
    /// <summary>Most bytes of one piece; a browser sends one a second.</summary>
    public const long MostPiece = 64L << 20;

    // After so long without a piece the browser is taken for gone: a page that is alive sends one a second.
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private const int Most = 8;
    private const string Part = ".part", Facts = ".json";

    private readonly Lock gate = new();
    private readonly Dictionary<string, Running> running = new(StringComparer.Ordinal);
    private ITimer? sweeper;
    private int begun;
    private Task sweep = Task.CompletedTask;
    private bool gone;

    /// <summary>Begins a recording; its id, by which pieces are sent, and its name.</summary>
    public Outcome<(string Id, string Recording)> Begin(RecordingFacts facts)
    {
        if (Names(facts.Dossier) is not { } taken) return StoreSentences.NoDossier(facts.Dossier, []);
        lock (gate)
        {
            if (running.Count >= Most) return RecordingSentences.TooMany(Most);
            taken.UnionWith(running.Values.Where(each => each.Facts.Dossier == facts.Dossier).Select(each => each.Facts.Recording));
            var name = Enumerable.Range(1, int.MaxValue).Select(number => "V" + number.ToString(CultureInfo.InvariantCulture)).First(each => !taken.Contains(each));
            var id = time.GetUtcNow().ToString("yyyyMMdd-HHmmss-fff", CultureInfo.InvariantCulture) + "-" + (++begun).ToString(CultureInfo.InvariantCulture);
            try
            {
                Directory.CreateDirectory(folder);
                var known = facts with { Recording = name };
                // Held for as long as it runs: whoever finds it locked knows that somebody lives.
                var part = new FileStream(PathOf(id, Part), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 0, FileOptions.Asynchronous);
                using (var beside = new FileStream(PathOf(id, Facts), FileMode.CreateNew))
                {
                    JsonSerializer.Serialize(beside, known);
                    beside.Flush(flushToDisk: true);
                }

                running.Add(id, new(id, known, part) { Heard = time.GetTimestamp() });
                LookAgain();
                return (id, name);
            }
            catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
            {
                return FileTrouble.Of(trouble, folder);
            }
        }
    }

    /// <summary>The dossier of a recording under way; null when there is none.</summary>
    public string? DossierOf(string id) => Find(id)?.Facts.Dossier;

    /// <summary>
    /// Takes a piece that begins after <paramref name="at"/> bytes. One that came before, because its answer was lost, is taken once.
    /// What comes back is how much is stored for good.
    /// </summary>
    public async Task<Outcome<long>> Append(string id, long at, Stream piece, CancellationToken stop)
    {
        if (Find(id) is not { } found) return RecordingSentences.Over;
        // Read to its end first: a piece that breaks off leaves nothing.
        using var whole = new MemoryStream();
        await piece.CopyToAsync(whole, stop).ConfigureAwait(false);
        await found.Turn.WaitAsync(stop).ConfigureAwait(false);
        try
        {
            if (found.Over) return RecordingSentences.Over;
            found.Heard = time.GetTimestamp();
            var have = found.Length;
            if (at > have || at < 0) return RecordingSentences.Gap(have, at);
            var known = (int)Math.Min(have - at, whole.Length);
            if (have + whole.Length - known > mostBytes) return RecordingSentences.TooLong(mostBytes);
            found.Part.Position = have;
            await found.Part.WriteAsync(whole.GetBuffer().AsMemory(known, (int)whole.Length - known), CancellationToken.None).ConfigureAwait(false);
            found.Part.Flush(flushToDisk: true);
            return found.Length += whole.Length - known;
        }
        catch (IOException trouble)
        {
            return FileTrouble.Of(trouble, folder);
        }
        finally
        {
            found.Turn.Release();
        }
    }

    /// <summary>Ends a recording and keeps it.</summary>
    public async Task<Outcome<KeptRecording>> End(string id, bool byHand = true)
    {
        if (Find(id) is not { } found) return RecordingSentences.Over;
        await found.Turn.WaitAsync().ConfigureAwait(false);
        try
        {
            if (found.Over) return RecordingSentences.Over;
            found.Over = true;
            // A disk that filled up in the middle of a piece left some of it.
            found.Part.SetLength(found.Length);
            var kept = await Keep(id, found.Facts, found.Part, byHand).ConfigureAwait(false);
            await found.Part.DisposeAsync().ConfigureAwait(false);
            return kept;
        }
        finally
        {
            lock (gate) running.Remove(id);
            found.Turn.Release();
        }
    }

    /// <summary>
    /// Keeps what a program that was killed left behind, now and from time to time; what another program is recording stays with it.
    /// The task is over when that is done; asked again meanwhile, it is the one that runs. <see cref="Dispose"/> waits for it.
    /// </summary>
    public Task Recover()
    {
        lock (gate)
        {
            if (gone || !sweep.IsCompleted) return sweep;
            LookAgain();
            return sweep = Task.Run(RecoverAll);
        }
    }

    private async Task RecoverAll()
    {
        if (!Directory.Exists(folder)) return;
        foreach (var beside in Directory.EnumerateFiles(folder, "*" + Facts).Order(StringComparer.Ordinal).ToList())
        {
            var id = Path.GetFileNameWithoutExtension(beside);
            if (Find(id) is not null) continue;
            if (Volatile.Read(ref gone)) return;
            try
            {
                var facts = JsonSerializer.Deserialize<RecordingFacts>(await File.ReadAllTextAsync(beside).ConfigureAwait(false));
                var part = new FileStream(PathOf(id, Part), FileMode.Open, FileAccess.ReadWrite, FileShare.None, 0, FileOptions.Asynchronous);
                await using (part.ConfigureAwait(false))
                {
                    if (facts is not null) await Keep(id, facts, part, byHand: false).ConfigureAwait(false);
                }
            }
            catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or JsonException)
            {
                // Held by a living program, or by one that is still dying, or unreadable: it stays where it is and is looked at again.
            }
        }
    }

    /// <summary>Ends and keeps all that run, and waits for the sweep that does: nothing is written to the workspace once it is let go.</summary>
    public void Dispose()
    {
        List<string> left;
        Task last;
        lock (gate)
        {
            gone = true;
            (left, last) = ([.. running.Keys], sweep);
            sweeper?.Dispose();
        }

        foreach (var id in left) End(id, byHand: false).GetAwaiter().GetResult();
        // What went wrong in it was for whoever asked for it.
        Task.WaitAny(last);
    }

    private void LookAgain() => sweeper ??= time.CreateTimer(_ => Sweep(), null, Patience / 4, Patience / 4);

    private void Sweep()
    {
        _ = Recover();
        List<string> silent;
        lock (gate) silent = [.. running.Values.Where(each => time.GetElapsedTime(each.Heard) > Patience).Select(each => each.Id)];
        foreach (var id in silent) _ = End(id, byHand: false);
    }

    private Running? Find(string id)
    {
        lock (gate) return running.GetValueOrDefault(id);
    }

    // First into the store, for good, and only then away from here; each step may be the last one of a program that is killed.
    private async Task<Outcome<KeptRecording>> Keep(string id, RecordingFacts facts, FileStream part, bool byHand)
    {
        if (part.Length == 0)
        {
            Forget(id);
            return RecordingSentences.Empty;
        }

        part.Position = 0;
        var added = await data.Add(facts.Dossier, facts.Recording + "." + facts.Ending, part, "recording", CancellationToken.None).ConfigureAwait(false);
        if (!added.TryValue(out var file)) return Outcome<KeptRecording>.Failed(added.Faults);
        // A start before this one may have come as far as this.
        var said = data.View(facts.Dossier, open => open.Session.View.Live<RecordingSighting>().Select(each => each.Value.File).ToHashSet(StringComparer.Ordinal))?.Contains(file.Sha256) == true;
        var entries = new List<EntryId> { new(file.Entry) };
        if (!said)
        {
            var line = Line.Of("recording").Set("recording", facts.Recording).Set("file", file.Sha256).Set("voice", facts.Voice).Set("broke_off", byHand ? null : true)
                .Set("zoom", facts.Zoom).Set("light", facts.Light).Set("camera", facts.Camera);
            var noted = data.Note(facts.Dossier, Line.Written([line]));
            if (!noted.TryValue(out var stored)) return Outcome<KeptRecording>.Failed(noted.Faults);
            entries.AddRange(stored.Select(entry => entry.Id));
        }

        Forget(id);
        return new KeptRecording(facts.Recording, file.Sha256, [.. entries]);
    }

    private void Forget(string id)
    {
        try
        {
            // What says whose it is goes last: without it the rest would never be found again.
            File.Delete(PathOf(id, Part));
            File.Delete(PathOf(id, Facts));
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            // It is kept twice then, which loses nothing.
        }
    }

    private string PathOf(string id, string ending) => Path.Combine(folder, id + ending);

    private HashSet<string>? Names(string dossier) => data.View(dossier, open => open.Session.View.Live<RecordingSighting>().Select(each => each.Value.Recording)
        .Concat(open.Session.View.Live<MomentSighting>().Select(each => each.Value.Recording)).ToHashSet(StringComparer.Ordinal));

    private sealed class Running(string id, RecordingFacts facts, FileStream part)
    {
        public string Id => id;

        public RecordingFacts Facts => facts;

        public FileStream Part => part;

        public SemaphoreSlim Turn { get; } = new(1);

        public long Length { get; set; }

        public long Heard { get; set; }

        public bool Over { get; set; }
    }
}
