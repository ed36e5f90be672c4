using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Working;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Composing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Working;

/// <summary>
/// Makes pictures of pictures for the pages: one job at a time, since each holds its pictures in memory. The result is stored as a file
/// and one entry, whether the page that asked is still there or not. The vision library is first looked for here, when a job begins.
/// </summary>
public sealed class ComposeDesk : IDisposable
{
    /// <summary>How a made file says it came.</summary>
    public const string From = "composed";

    private readonly IBenchData data;
    private readonly JobDesk jobs;
    private readonly Acts acts;
    private readonly HeadsWatch watch;
    private readonly Func<string, string?> pathOf;
    private readonly Func<ComposeOrder, IJobReport, Outcome<Composition>> make;
    private readonly SemaphoreSlim turn = new(1);
    private readonly Lock gate = new();
    private readonly Dictionary<string, Job<ComposedPicture>> last = new(StringComparer.Ordinal);

    internal ComposeDesk(IBenchData data, JobDesk jobs, Acts acts, HeadsWatch watch, Func<string, string?> pathOf, Func<ComposeOrder, IJobReport, Outcome<Composition>> make) =>
        (this.data, this.jobs, this.acts, this.watch, this.pathOf, this.make) = (data, jobs, acts, watch, pathOf, make);

    /// <summary>The last job of a dossier since the workbench started; null where there is none.</summary>
    public Job<ComposedPicture>? Last(string dossier)
    {
        lock (gate) return last.GetValueOrDefault(dossier);
    }

    /// <summary>Starts a job; its result is stored when it says so.</summary>
    /// <param name="dossier">The dossier of the pictures.</param>
    /// <param name="method">How.</param>
    /// <param name="pictures">Their hashes and names, in order.</param>
    /// <param name="stepMm">Step of a stack, mm; null where not known.</param>
    /// <param name="umPerPx">Scale of the first picture, µm a px; null where it has none.</param>
    public Job<ComposedPicture> Start(string dossier, ComposeMethod method, IReadOnlyList<(string Sha256, string Name)> pictures, double? stepMm, double? umPerPx)
    {
        var job = jobs.Start(ComposeDeskSentences.JobName(method, pictures.Count), async report =>
        {
            await turn.WaitAsync(report.Stop).ConfigureAwait(false);
            try
            {
                return await Run(dossier, method, pictures, stepMm, umPerPx, report).ConfigureAwait(false);
            }
            finally
            {
                turn.Release();
            }
        });
        lock (gate) last[dossier] = job;
        return job;
    }

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    private async Task<Outcome<ComposedPicture>> Run(string dossier, ComposeMethod method, IReadOnlyList<(string Sha256, string Name)> pictures, double? stepMm, double? umPerPx, IJobReport report)
    {
        var sources = new List<SourcePicture>();
        foreach (var (sha256, name) in pictures)
        {
            if (pathOf(sha256) is not { } path) return new Fault(name, "a stored picture", ComposeDeskSentences.Gone(name));
            var header = PictureFile.Read(path, name);
            if (!header.TryValue(out var found)) return Outcome<ComposedPicture>.Failed(header.Faults);
            sources.Add(new(path, name, sha256, found));
        }

        var made = make(new(method, [.. sources], stepMm, umPerPx), report);
        if (!made.TryValue(out var composition)) return Outcome<ComposedPicture>.Failed(made.Faults);
        report.Stop.ThrowIfCancellationRequested();
        return await Store(dossier, method, composition, report.Stop).ConfigureAwait(false);
    }

    // The files first, for good; only then the entry that names them.
    private async Task<Outcome<ComposedPicture>> Store(string dossier, ComposeMethod method, Composition made, CancellationToken stop)
    {
        var word = ComposedKind.Methods.First(each => each.Method == method).Word;
        var files = new List<EntryId>();
        var picture = await Put(dossier, word, made.Picture, files, stop).ConfigureAwait(false);
        if (!picture.TryValue(out var first)) return Outcome<ComposedPicture>.Failed(picture.Faults);
        var second = "";
        if (made.Second is { } beside)
        {
            var put = await Put(dossier, method == ComposeMethod.Stack ? "heights" : "relief", beside, files, stop).ConfigureAwait(false);
            if (!put.TryValue(out second!)) return Outcome<ComposedPicture>.Failed(put.Faults);
        }

        var noted = await acts.InTurn(dossier, () => Task.FromResult(data.Note(dossier, Line.Written([Written(word, first, second, made), .. Tags(dossier, first, made.Inputs)])))).ConfigureAwait(false);
        watch.Poke();
        return noted.Then(entries =>
        {
            // Taken back, what was made goes out of sight with what it was made of.
            acts.Did(dossier, ComposeDeskSentences.Done(word), [.. files, .. entries.Select(entry => entry.Entry.Id)]);
            return new ComposedPicture(first, second, [.. made.Says]);
        });
    }

    /// <summary>What was said alike of every picture it is made of (specimen, side, zoom, light, camera) holds for what was made; no line where nothing was.</summary>
    private IEnumerable<Line> Tags(string dossier, string made, IReadOnlyList<string> inputs)
    {
        var told = data.View(dossier, open => inputs.Select(input => open.Session.View.Live<PictureSighting>()
            .LastOrDefault(each => open.Model.Picture(each.Value.File) is { Found: true } picture && picture.Sha256 == input)).ToList()) ?? [];
        if (told.Count == 0 || told.Contains(null)) return [];
        string Alike(Func<Sighting<PictureSighting>, string> tag) => told.Select(each => tag(each!)).Distinct(StringComparer.Ordinal).ToList() is [var one] ? one : "";
        string[] tags = [Alike(each => each.Specimen), Alike(each => each.Value.Side == PictureSide.Unknown ? "" : each.Value.Side.ToString().ToLowerInvariant()), Alike(each => each.Value.Zoom), Alike(each => each.Value.Light), Alike(each => each.Value.Camera)];
        return tags.All(tag => tag.Length == 0)
            ? []
            : [Line.Of("picture").Set("specimen", tags[0]).Set("file", made).Set("side", tags[1]).Set("zoom", tags[2]).Set("light", tags[3]).Set("camera", tags[4])];
    }

    // A file that was there before is not taken back with what was made of it anew.
    private async Task<Outcome<string>> Put(string dossier, string word, byte[] png, List<EntryId> files, CancellationToken stop)
    {
        using var stream = new MemoryStream(png, writable: false);
        // Named after its content: the same pictures made again the same way are the same file.
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(png));
        var added = await data.Add(dossier, $"{word}-{Showing.ShortHash.Of(hash)}.png", stream, From, stop).ConfigureAwait(false);
        if (added.TryValue(out var file) && file.Already.Length == 0) files.Add(new(file.Entry));
        return added.Then(each => each.Sha256);
    }

    private static Line Written(string word, string picture, string second, Composition made)
    {
        var line = Line.Of("composed").Set("picture", picture).Set("second", second).Set("method", word).Set("inputs", made.Inputs).Set("left_out", made.LeftOut)
            .Set("settings", made.Settings).Set("program", made.Program);
        if (made.FirstAt is { } at) line.Set("first_at", at.X, at.Y);
        // Rounded: a machine's last digits are its own.
        line.Set("rest_px", Rounded(made.RestPx)).Set("loop_px", Rounded(made.LoopPx));
        if (made.Heights is { } heights) line.Set(made.HeightsInMm ? "heights_mm" : "heights_slices", [Math.Round(heights.From, 6), Math.Round(heights.To, 6)]);
        return line.Set("says", made.Says);
    }

    private static double? Rounded(double? px) => px is { } value ? Math.Round(value, 3) : null;
}
