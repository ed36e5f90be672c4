using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Reading.Spots;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Working;

/// <summary>
/// Reads marks by the machine, one job at a time: a spot's, or all that are left. Each reading is stored as it is made, so that a stop or a kill
/// loses none, and one job is one act to take back. The networks are opened when the first mark is read; where they are missing or altered the job
/// says so and the next one looks again.
/// </summary>
public sealed class ReadDesk : IDisposable
{
    private readonly IBenchData data;
    private readonly JobDesk jobs;
    private readonly Acts acts;
    private readonly HeadsWatch watch;
    private readonly PictureSeats seats;
    private readonly Func<IReadingNetworks> open;
    private readonly SemaphoreSlim turn = new(1);
    private readonly Lock gate = new();
    private readonly Dictionary<string, (string Spot, Job<ReadTally> Job)> last = new(StringComparer.Ordinal);
    private IReadingNetworks? networks;
    private volatile bool over;

    internal ReadDesk(IBenchData data, JobDesk jobs, Acts acts, HeadsWatch watch, PictureSeats seats, Func<IReadingNetworks> open) =>
        (this.data, this.jobs, this.acts, this.watch, this.seats, this.open) = (data, jobs, acts, watch, seats, open);

    /// <summary>The last job of a dossier since the workbench started and the spot it is about, empty for all; null where there is none.</summary>
    public (string Spot, Job<ReadTally> Job)? Last(string dossier)
    {
        lock (gate) return last.TryGetValue(dossier, out var job) ? job : null;
    }

    /// <summary>Reads the mark on a spot, of each specimen by itself, once more where it was read.</summary>
    public Job<ReadTally> Start(string dossier, string spot)
    {
        Guard.That(Guard.NotNull(spot).Length > 0, "a spot");
        return Start(dossier, spot, withMarked: true);
    }

    /// <summary>Reads all marks that these networks have not read; what a person has read only where that is asked for.</summary>
    public Job<ReadTally> StartAll(string dossier, bool withMarked) => Start(dossier, "", withMarked);

    /// <summary>True once the workbench closes: whoever runs the networks ends.</summary>
    internal bool IsClosing => over;

    /// <summary>Other work with the networks, in turn with the reading of marks.</summary>
    internal async Task<Outcome<T>> InTurn<T>(IJobReport report, Func<IReadingNetworks, Task<Outcome<T>>> work)
    {
        await turn.WaitAsync(report.Stop).ConfigureAwait(false);
        try
        {
            report.Say(0, 0, ReadDeskSentences.Opening);
            return Open() is { Count: > 0 } troubles ? Outcome<T>.Failed(troubles) : await work(networks!).ConfigureAwait(false);
        }
        finally
        {
            turn.Release();
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // A job that looks up ends; the networks must not be let go in the middle of a picture.
        over = true;
        turn.Wait();
        (networks as IDisposable)?.Dispose();
    }

    private Job<ReadTally> Start(string dossier, string spot, bool withMarked)
    {
        lock (gate)
        {
            // Whoever presses twice means one reading.
            if (last.TryGetValue(dossier, out var under) && under.Spot == spot && under.Job.State == JobState.Running) return under.Job;
            var job = jobs.Start(ReadDeskSentences.JobName(spot), async report =>
            {
                await turn.WaitAsync(report.Stop).ConfigureAwait(false);
                try
                {
                    return await Run(dossier, spot, withMarked, report).ConfigureAwait(false);
                }
                finally
                {
                    turn.Release();
                }
            });
            last[dossier] = (spot, job);
            return job;
        }
    }

    private async Task<Outcome<ReadTally>> Run(string dossier, string spot, bool withMarked, IJobReport report)
    {
        report.Say(0, 0, ReadDeskSentences.Opening);
        if (Open() is { Count: > 0 } troubles) return Outcome<ReadTally>.Failed(troubles);
        var wanted = data.View(dossier, each => spot.Length > 0 ? new MarksLeft([.. SpotsToRead.Of(each, spot)], 0, 0, 0) : SpotsToRead.Left(each, networks!.Hashes, withMarked));
        if (wanted is null) return StoreSentences.NoDossier(dossier, []);
        if (spot.Length > 0 && wanted.Wanted.Count == 0) return ReadDeskSentences.Unseen(spot);
        var (tally, stored) = (new ReadTally(0, 0, 0, wanted.Read, wanted.ByPeople, wanted.Unread, []), new List<EntryId>());
        try
        {
            var (reader, done) = (new SpotReader(networks!), 0);
            foreach (var mark in wanted.Wanted)
            {
                report.Stop.ThrowIfCancellationRequested();
                report.Say(done++, wanted.Wanted.Count, ReadDeskSentences.Looking(mark.Spot, mark.Specimen));
                var scans = new List<Outcome<SpotScan>>();
                foreach (var picture in mark.Pictures)
                {
                    if (over) return new Fault(spot, "an open workbench", ReadDeskSentences.Closing(spot));
                    scans.Add(await seats.Take(PictureSeats.IsLarge(picture.Header), () => reader.Scan(mark.Spot, picture), report.Stop).ConfigureAwait(false));
                }

                var read = reader.Weigh(mark.Spot, mark.Pictures, scans, mark.Faults, OpenDossier.Program);
                if (!read.Ok) await Remember(dossier, mark, read.Faults).ConfigureAwait(false);
                tally = read.TryValue(out var reading) ? Counted(tally, mark, reading, await Store(dossier, mark.Specimen, reading).ConfigureAwait(false), stored) : Refused(tally, mark, read.Faults);
            }
        }
        finally
        {
            if (stored.Count > 0) acts.Did(dossier, ReadDeskSentences.Done(spot, tally.Read), stored);
            watch.Poke();
        }

        return spot.Length > 0 && tally.Read + tally.Same == 0 ? Outcome<ReadTally>.Failed([.. tally.Refused.Select(each => new Fault(each.Spot, "a mark that can be read", each.Say))]) : tally;
    }

    private IReadOnlyList<Fault> Open()
    {
        networks ??= open();
        if (networks.Troubles is not { Count: > 0 } troubles) return [];
        // Put back meanwhile, they are found without a new start.
        (networks as IDisposable)?.Dispose();
        networks = null;
        return troubles;
    }

    // No entries where it reads as the one that is there.
    private Task<Outcome<List<EntryId>>> Store(string dossier, string specimen, ReadingSighting reading) => acts.InTurn(dossier, () =>
    {
        var lines = data.View(dossier, each => new Written(StoredReadings.Same(each.Session.View, specimen, reading) is null ? StoredReadings.Lines(each.Session.View, specimen, reading) : null))?.Lines;
        return Task.FromResult(lines is { } written ? data.Note(dossier, written).Then(entries => entries.Select(entry => entry.Id).ToList()) : new List<EntryId>());
    });

    // No act of its own: there is nothing in it to take back, and it is tried again whenever a spot is asked for.
    private Task<Outcome<List<EntryId>>> Remember(string dossier, SpotToRead mark, IReadOnlyList<Fault> faults) => acts.InTurn(dossier, () =>
    {
        var unread = StoredUnread.Made(mark, networks!.Hashes, OpenDossier.Program, faults);
        var lines = unread is null ? null : data.View(dossier, each => new Written(StoredUnread.Lines(each.Session.View, mark.Specimen, unread)))?.Lines;
        return Task.FromResult(lines is { } written ? data.Note(dossier, written).Then(entries => entries.Select(entry => entry.Id).ToList()) : new List<EntryId>());
    });

    private static ReadTally Counted(ReadTally tally, SpotToRead mark, ReadingSighting reading, Outcome<List<EntryId>> noted, List<EntryId> stored)
    {
        if (!noted.TryValue(out var entries)) return Refused(tally, mark, noted.Faults);
        stored.AddRange(entries);
        return entries.Count == 0 ? tally with { Same = tally.Same + 1 } : tally with { Read = tally.Read + 1, Empty = tally.Empty + (reading.Lines.Count == 0 ? 1 : 0) };
    }

    private static ReadTally Refused(ReadTally tally, SpotToRead mark, IReadOnlyList<Fault> faults) => tally with { Refused = [.. tally.Refused, .. faults.Select(fault => (mark.Spot, fault.Say))] };

    private sealed record Written(ReadOnlyMemory<byte>? Lines);
}
