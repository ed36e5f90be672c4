using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Store;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Pictures;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Reading.Parts;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Working;

/// <summary>Finds and reads the parts of a whole board in a picture, as a job in turn with those that read marks. What it finds is kept as long as the workbench runs and is stored by whoever takes it.</summary>
public sealed class PartsDesk
{
    private readonly IBenchData data;
    private readonly JobDesk jobs;
    private readonly PictureSeats seats;
    private readonly ReadDesk reading;
    private readonly Lock gate = new();
    private readonly Dictionary<(string Dossier, string Sha256), Job<PartsFound>> last = [];

    internal PartsDesk(IBenchData data, JobDesk jobs, PictureSeats seats, ReadDesk reading) => (this.data, this.jobs, this.seats, this.reading) = (data, jobs, seats, reading);

    /// <summary>The last job about a picture since the workbench started; null where there is none, or what it found was left.</summary>
    public Job<PartsFound>? Last(string dossier, string sha256)
    {
        lock (gate) return last.GetValueOrDefault((dossier, sha256));
    }

    /// <summary>Starts a job; one under way for the picture goes on.</summary>
    /// <param name="dossier">The dossier.</param>
    /// <param name="sha256">Hash of the picture.</param>
    /// <param name="name">Its name; hostile text.</param>
    public Job<PartsFound> Start(string dossier, string sha256, string name)
    {
        lock (gate)
        {
            if (last.TryGetValue((dossier, sha256), out var under) && under.State == JobState.Running) return under;
            return last[(dossier, sha256)] = jobs.Start(PartsDeskSentences.JobName(name), report => reading.InTurn(report, networks => Run(dossier, sha256, name, networks, report)));
        }
    }

    /// <summary>What was found in a picture is left.</summary>
    public void Leave(string dossier, string sha256)
    {
        lock (gate) last.Remove((dossier, sha256));
    }

    private async Task<Outcome<PartsFound>> Run(string dossier, string sha256, string name, IReadingNetworks networks, IJobReport report)
    {
        report.Say(0, 0, PartsDeskSentences.Opening);
        var stored = data.View(dossier, open => new Stored(open.Workspace.Files.PathOf(sha256), open.Picture(sha256, name)));
        if (stored is null) return StoreSentences.NoDossier(dossier, []);
        if (!stored.Header.TryValue(out var header)) return Outcome<PartsFound>.Failed(stored.Header.Faults);
        var opened = await seats.Take(PictureSeats.IsLarge(header), () => PartReader.Open(stored.Path, name, header), report.Stop).ConfigureAwait(false);
        if (!opened.TryValue(out var grey)) return Outcome<PartsFound>.Failed(opened.Faults);
        void Say(long done, long all)
        {
            // The networks must not be let go while they run.
            if (reading.IsClosing) throw new OperationCanceledException();
            report.Say(done, all, PartsDeskSentences.Looking);
        }

        var read = new PartReader(networks).Read(grey, header, Say, report.Stop);
        return new PartsFound([.. read.Parts.Select(part => (part.HasBody, ReadingSighting.Of("", [sha256], part.Region, part.Read, networks, OpenDossier.Program)))], read.Says);
    }

    private sealed record Stored(string Path, Outcome<PictureHeader> Header);
}
