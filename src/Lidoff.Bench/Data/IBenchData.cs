using Lidoff.Numbers.Failing;

namespace Lidoff.Bench.Data;

/// <summary>
/// What the page shows, as the program knows it. Every text in these records may be hostile; the page takes care of that.
/// Methods may take their time and come from any thread; they see one state of the store each.
/// </summary>
public interface IBenchData
{
    /// <summary>
    /// A short text that changes whenever anything was appended, by this process or another: the store's heads. Asked for
    /// several times a second while a page is open, so it must be cheap.
    /// </summary>
    string Heads();

    /// <summary>All dossiers, by name.</summary>
    IReadOnlyList<DossierRow> Dossiers();

    /// <summary>One dossier's page; null when there is no such dossier.</summary>
    DossierPageModel? Dossier(string name);

    /// <summary>A stored file by its SHA-256 (64 lower-case hex digits); null when there is none or it was erased.</summary>
    StoredFile? File(string sha256);

    /// <summary>
    /// Takes a file into a dossier, streaming. Acknowledged only when it is stored for good. The name is a bare name without
    /// folders. Faults say what was refused; a body that breaks off or grows too large throws, and nothing may be kept of it.
    /// </summary>
    Task<Outcome<AddedFile>> Add(string dossier, string fileName, Stream body, CancellationToken stop);
}
