using Lidoff.Bench.Data;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;

namespace Lidoff.Bench.Rooms.See.Viewing;

/// <summary>Has a stored picture looked through when a person asks for it, in turn with all who decode pictures; nothing is stored.</summary>
internal static class StoredPixels
{
    /// <summary>What was made of it, or why it cannot be read.</summary>
    /// <param name="data">The dossiers.</param>
    /// <param name="seats">Seats of those who decode.</param>
    /// <param name="dossier">The dossier.</param>
    /// <param name="sha256">The picture.</param>
    /// <param name="name">Its name for people.</param>
    /// <param name="look">Looks, at its path with its header.</param>
    public static async Task<Outcome<T>> Read<T>(IBenchData data, PictureSeats seats, string dossier, string sha256, string name, Func<string, PictureHeader, Outcome<T>> look)
    {
        var stored = await Task.Run(() => data.View(dossier, open => new Stored(open.Workspace.Files.PathOf(sha256), open.Picture(sha256, name)))).ConfigureAwait(false);
        if (stored is null) return new Fault(name, "a stored picture", SeeSentences.NoPicture);
        if (!stored.Header.TryValue(out var header)) return Outcome<T>.Failed(stored.Header.Faults);
        return await seats.Take(PictureSeats.IsLarge(header), () => look(stored.Path, header), CancellationToken.None).ConfigureAwait(false);
    }

    private sealed record Stored(string Path, Outcome<PictureHeader> Header);
}
