using Lidoff.Bench.Data;
using Lidoff.Bench.Hosting;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Measuring;
using Lidoff.Seeing.Pictures;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Working;

/// <summary>
/// Looks at every picture with a known length once, as soon as something is measured in it or it is opened, quietly and one at a time, and stores
/// what its edges and words say as a machine's sighting: lengths in it then rest on that too. Several looks are stored at once, since every page
/// that is open is made anew after each storing. A look that was taken back is not repeated, a picture that cannot be read not tried again
/// before the workbench starts anew. Safe from any thread.
/// </summary>
/// <param name="data">The dossiers.</param>
/// <param name="acts">Whose turn it is in a dossier.</param>
/// <param name="seats">Who may decode.</param>
/// <param name="poke">Tells the pages that something was stored.</param>
/// <param name="log">Hears of what nobody foresaw.</param>
public sealed class LookDesk(IBenchData data, Acts acts, PictureSeats seats, Action poke, Action<string> log) : IDisposable
{
    // So many looks are stored together; what an end in between loses is looked at again. A judgement: a minute of looking repaints seldom.
    private const int Together = 8;

    private readonly Lock gate = new();
    private readonly HashSet<string> waiting = new(StringComparer.Ordinal);
    private readonly HashSet<(string Dossier, string Sha256)> unreadable = [];
    private readonly HashSet<(string Dossier, string Sha256)> opened = [];
    private Task working = Task.CompletedTask;
    private bool busy;
    private bool over;

    /// <summary>Looks at what is to be looked at in a dossier, beside whatever else goes on; returns at once. <paramref name="picture"/> is one that was opened, by its hash; empty for none.</summary>
    public void See(string dossier, string picture = "")
    {
        lock (gate)
        {
            if (over) return;
            if (picture.Length > 0) opened.Add((dossier, picture));
            waiting.Add(dossier);
            if (busy) return;
            busy = true;
            working = Task.Run(Work);
        }
    }

    /// <summary>Ends when nothing is left to look at.</summary>
    public Task Rest()
    {
        lock (gate) return working;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Task last;
        lock (gate)
        {
            over = true;
            waiting.Clear();
            last = working;
        }

        // The store behind it must not be let go in the middle of a look.
        last.Wait();
    }

    private async Task Work()
    {
        while (Next() is { } dossier)
        {
            try
            {
                var seen = new Dictionary<string, Line>(StringComparer.Ordinal);
                while (Wanted(dossier, seen.Keys) is { } picture)
                {
                    if (await Look(dossier, picture).ConfigureAwait(false) is { } line) seen[picture.Sha256] = line;
                    if (seen.Count < Together) continue;
                    await Store(dossier, seen).ConfigureAwait(false);
                    seen.Clear();
                }

                if (seen.Count > 0) await Store(dossier, seen).ConfigureAwait(false);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or ObjectDisposedException)
            {
                // A store that is busy or going: the next change of the dossier asks again.
                log(e.Message);
            }
        }
    }

    private string? Next()
    {
        lock (gate)
        {
            var next = waiting.Order(StringComparer.Ordinal).FirstOrDefault();
            if (next is null) busy = false;
            else waiting.Remove(next);
            return next;
        }
    }

    private async Task<Line?> Look(string dossier, Picture picture)
    {
        var seeing = await seats.Take(PictureSeats.IsLarge(picture.Header), () => PictureLook.At(picture.Path, picture.Name, picture.Header), CancellationToken.None).ConfigureAwait(false);
        if (!seeing.TryValue(out var look))
        {
            lock (gate) unreadable.Add((dossier, picture.Sha256));
            return null;
        }

        var seen = LookSighting.Of(picture.Sha256, look, OpenDossier.Program);
        return Line.Of("look").Set("picture", seen.Picture).Set("edges", seen.Edges).Set("edges_covariance", seen.Covariance).Set("words_mirrored", seen.WordsMirrored).Set("program", seen.Program);
    }

    private async Task Store(string dossier, Dictionary<string, Line> seen)
    {
        var noted = await acts.InTurn(dossier, () => Task.FromResult(data.Note(dossier, Line.Written([.. seen.OrderBy(each => each.Key, StringComparer.Ordinal).Select(each => each.Value)])))).ConfigureAwait(false);
        if (!noted.Ok)
        {
            lock (gate) unreadable.UnionWith(seen.Keys.Select(picture => (dossier, picture)));
            log(noted.Faults[0].Say);
        }

        poke();
    }

    private Picture? Wanted(string dossier, IReadOnlyCollection<string> inHand)
    {
        lock (gate)
        {
            if (over) return null;
        }

        return data.View(dossier, open => new Answer(Find(open, dossier, inHand)))?.Picture;
    }

    private Picture? Find(OpenDossier open, string dossier, IReadOnlyCollection<string> inHand)
    {
        var wanted = MeasuredPictures.Of(open).ToHashSet(StringComparer.Ordinal);
        lock (gate)
        {
            wanted.UnionWith(opened.Where(each => each.Dossier == dossier).Select(each => each.Sha256));
            wanted.ExceptWith(unreadable.Where(each => each.Dossier == dossier).Select(each => each.Sha256));
        }

        wanted.ExceptWith(inHand);
        wanted.RemoveWhere(picture => !open.WantsLook(picture));
        if (wanted.Count == 0) return null;
        foreach (var file in open.Session.View.Live<FileAdded>().Select(each => each.Value).Where(each => wanted.Contains(each.Sha256)))
        {
            if (open.Picture(file.Sha256, file.Name).TryValue(out var header)) return new(file.Sha256, file.Name, open.Workspace.Files.PathOf(file.Sha256), header);
        }

        return null;
    }

    private sealed record Answer(Picture? Picture);

    private sealed record Picture(string Sha256, string Name, string Path, PictureHeader Header);
}
