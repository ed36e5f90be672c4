using Lidoff.Bench.Data;
using Lidoff.Evidence.Pictures;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Measuring.Edges;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Rooms.See.Edging;

/// <summary>Looks for edges in a stored picture, taking its turn among those who decode pictures.</summary>
internal static class EdgeFinder
{
    /// <summary>The edges near some places, or why the picture cannot be read.</summary>
    /// <param name="data">The dossiers.</param>
    /// <param name="seats">Seats of those who decode.</param>
    /// <param name="dossier">The dossier.</param>
    /// <param name="sha256">The picture.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="tool">What was clicked; one that fits.</param>
    /// <param name="points">Where.</param>
    /// <param name="clickPx">Standard uncertainty of a click, px.</param>
    public static async Task<Outcome<EdgeProposal>> Find(IBenchData data, PictureSeats seats, string dossier, string sha256, string name, string tool, IReadOnlyList<PicturePoint> points, double clickPx)
    {
        var stored = await Task.Run(() => data.View(dossier, open => new Stored(open.Workspace.Files.PathOf(sha256), open.Picture(sha256, name)))).ConfigureAwait(false);
        if (stored is null) return new Fault(name, "a stored picture", SeeSentences.NoPicture);
        if (!stored.Header.TryValue(out var header)) return Outcome<EdgeProposal>.Failed(stored.Header.Faults);
        return await seats.Take(
            PictureSeats.IsLarge(header),
            () => PictureEdges.Read(stored.Path, name, header, [.. points], clickPx).Then<EdgeProposal>(edges => EdgeProposal.Of(edges, tool, points, clickPx)),
            CancellationToken.None).ConfigureAwait(false);
    }

    private sealed record Stored(string Path, Outcome<PictureHeader> Header);
}
