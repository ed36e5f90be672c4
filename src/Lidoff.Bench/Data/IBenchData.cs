using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Data;

/// <summary>
/// What the pages read and write, as the workspace holds it. Every text that comes out of it may be hostile; the page takes care of
/// that. Methods may take their time and come from any thread; they see one state of the store each.
/// </summary>
public interface IBenchData
{
    /// <summary>
    /// A short text that changes whenever anything was appended, by this process or another: the store's heads. Asked for
    /// several times a second while a page is open, so it must be cheap.
    /// </summary>
    string Heads();

    /// <summary>Whether nobody is at the store right now, so that a view is made without waiting for another. A hint: the next moment somebody may be.</summary>
    bool Idle { get; }

    /// <summary>All dossiers, by name.</summary>
    IReadOnlyList<DossierRow> Dossiers();

    /// <summary>
    /// What <paramref name="look"/> makes of one dossier as it stands; null when there is no such dossier. It must hand back a value of
    /// its own and keep nothing of the dossier, which others may change the moment it returns.
    /// </summary>
    T? View<T>(string dossier, Func<OpenDossier, T> look)
        where T : class;

    /// <summary>Begins a dossier under a short name, with a title in words.</summary>
    Outcome<IReadOnlyList<StoredEntry>> Begin(string dossier, string title);

    /// <summary>
    /// Notes lines as <c>lidoff note</c> reads them, all or none: one refused line keeps the others out, and every fault of every line
    /// comes back. What is returned is stored for good.
    /// </summary>
    Outcome<IReadOnlyList<StoredEntry>> Note(string dossier, ReadOnlyMemory<byte> lines);

    /// <summary>A stored file by its SHA-256 (64 lower-case hex digits); null when there is none or it was erased.</summary>
    StoredFile? File(string sha256);

    /// <summary>
    /// Takes a file into a dossier, streaming. Acknowledged only when it is stored for good. The name is a bare name without
    /// folders; <paramref name="from"/> says how it came ("drop", "camera", "watch"). Faults say what was refused; a body that breaks
    /// off or grows too large throws, and nothing may be kept of it.
    /// </summary>
    Task<Outcome<AddedFile>> Add(string dossier, string fileName, Stream body, string from, CancellationToken stop);
}
