using System.Reflection;
using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Working;
using Lidoff.Numbers;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Boards.Finding;
using Lidoff.Seeing.Boards.Finding.Matching;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Working;

/// <summary>Lays two pictures of a dossier on one another by their holes, as a job; what it finds is stored as one entry, a proposal. One job at a time.</summary>
public sealed class LayDesk : IDisposable
{
    /// <summary>Landmarks proposed at most: a board is held by a dozen far apart, and a person has to look at each.</summary>
    public const int MostLandmarks = 16;

    // Seed of what the matcher tries; part of its settings.
    private const ulong Seed = 1;

    private readonly IBenchData data;
    private readonly JobDesk jobs;
    private readonly Acts acts;
    private readonly HeadsWatch watch;
    private readonly PictureSeats seats;
    private readonly Func<string, string?> pathOf;
    private readonly SemaphoreSlim turn = new(1);
    private readonly Lock gate = new();
    private readonly Dictionary<string, (string First, string Second, Job<EntryId> Job)> last = new(StringComparer.Ordinal);

    internal LayDesk(IBenchData data, JobDesk jobs, Acts acts, HeadsWatch watch, PictureSeats seats, Func<string, string?> pathOf) =>
        (this.data, this.jobs, this.acts, this.watch, this.seats, this.pathOf) = (data, jobs, acts, watch, seats, pathOf);

    /// <summary>The last job of a dossier since the workbench started, with the pictures it is about; null where there is none.</summary>
    public (string First, string Second, Job<EntryId> Job)? Last(string dossier)
    {
        lock (gate) return last.TryGetValue(dossier, out var job) ? job : null;
    }

    /// <summary>Starts a job; it ends with the entry of what was found, or with the sentence of why nothing was.</summary>
    /// <param name="dossier">The dossier of both.</param>
    /// <param name="first">Hash and name of a picture.</param>
    /// <param name="second">The same of another one.</param>
    /// <param name="saidMirrored">Whether the sides noted say that they mirror one another; null where they say nothing.</param>
    public Job<EntryId> Start(string dossier, (string Sha256, string Name) first, (string Sha256, string Name) second, bool? saidMirrored)
    {
        Guard.That(first.Sha256 != second.Sha256, "two different pictures");
        var job = jobs.Start(LayDeskSentences.JobName(first.Name, second.Name), async report =>
        {
            await turn.WaitAsync(report.Stop).ConfigureAwait(false);
            try
            {
                return await Run(dossier, first, second, saidMirrored, report).ConfigureAwait(false);
            }
            finally
            {
                turn.Release();
            }
        });
        lock (gate) last[dossier] = (first.Sha256, second.Sha256, job);
        return job;
    }

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    private async Task<Outcome<EntryId>> Run(string dossier, (string Sha256, string Name) first, (string Sha256, string Name) second, bool? saidMirrored, IJobReport report)
    {
        var marks = new List<(string Name, PictureMarks Marks)>();
        foreach (var (sha256, name) in new[] { first, second })
        {
            report.Say(marks.Count, 3, LayDeskSentences.Looking(name));
            if (pathOf(sha256) is not { } path) return new Fault(name, "a stored picture", LayDeskSentences.Gone(name));
            var read = PictureFile.Read(path, name);
            if (!read.TryValue(out var header)) return Outcome<EntryId>.Failed(read.Faults);
            var found = await seats.Take(PictureSeats.IsLarge(header), () => PictureMarks.Find(path, name, header), report.Stop).ConfigureAwait(false);
            if (!found.TryValue(out var seen)) return Outcome<EntryId>.Failed(found.Faults);
            marks.Add((name, seen));
            report.Stop.ThrowIfCancellationRequested();
        }

        report.Say(2, 3, LayDeskSentences.Matching);
        var matched = BoardMatcher.Match(marks[0], marks[1], saidMirrored, Seed);
        if (!matched.TryValue(out var match)) return Outcome<EntryId>.Failed(matched.Faults);
        report.Stop.ThrowIfCancellationRequested();
        return await Store(dossier, first, second, match).ConfigureAwait(false);
    }

    private async Task<Outcome<EntryId>> Store(string dossier, (string Sha256, string Name) first, (string Sha256, string Name) second, BoardMatch match)
    {
        var noted = await acts.InTurn(dossier, () =>
        {
            var named = data.View(dossier, open => MatchNames.Of(open, first.Sha256, second.Sha256, MatchSpread.Of(match, MostLandmarks)));
            return Task.FromResult(named is { Count: >= 4 }
                ? data.Note(dossier, Line.Written([Written(first.Sha256, second.Sha256, match, named)]))
                : new Fault(second.Name, "holes that are no landmarks yet", LayDeskSentences.AllNamed(first.Name, second.Name)));
        }).ConfigureAwait(false);
        watch.Poke();
        return noted.Then(entries =>
        {
            acts.Did(dossier, LayDeskSentences.Done(first.Name, second.Name), entries.Select(entry => entry.Entry.Id));
            return entries[0].Entry.Id;
        });
    }

    // Rounded: a machine's last digits are its own.
    private static Line Written(string first, string second, BoardMatch match, IReadOnlyList<(string Name, MatchedMark Mark)> named)
    {
        var scale = Math.Sqrt(Math.Abs(match.Map.JacobianAt(named[0].Mark.First.At).Determinant));
        // What the fit leaves is shared by both pictures; a lens bends what no edge tells.
        var rest = match.RestPx / Math.Sqrt(2);
        return Line.Of("match").Set("first", first).Set("second", second).Set("mirrored", match.Mirrored)
            .Set("landmarks", [.. named.Select(each => each.Name)])
            .With("first_points", json => Points(json, named.Select(each => each.Mark.First)))
            .With("second_points", json => Points(json, named.Select(each => each.Mark.Second)))
            .Set("u_px", U(named.Max(each => each.Mark.First.UPx), rest / scale), U(named.Max(each => each.Mark.Second.UPx), rest))
            .Set("rests_px", [.. named.Select(each => Math.Round(each.Mark.RestPx, 3))])
            .Set("agree", (long)match.Pairs.Count).Set("of", (long)match.Of).Set("by_chance", Math.Round(match.ByChance, 3)).Set("log10_odds", Math.Round(match.LogOdds / Elementary.Log(10), 1))
            .Set("settings", FormattableString.Invariant($"holes and lands, letters apart, seed {Seed}")).Set("program", Version()).Set("says", match.Says);
    }

    private static double U(double edge, double rest) => Math.Round(Math.Max(0.05, Math.Sqrt((edge * edge) + (rest * rest))), 3);

    private static void Points(System.Text.Json.Utf8JsonWriter json, IEnumerable<FoundMark> marks)
    {
        json.WriteStartArray();
        foreach (var mark in marks)
        {
            json.WriteStartArray();
            json.WriteNumberValue(Math.Round(mark.At.X, 3));
            json.WriteNumberValue(Math.Round(mark.At.Y, 3));
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    private static string Version() => "lidoff " + (typeof(BoardMatcher).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "");
}
