using Lidoff.Evidence.Entries;

namespace Lidoff.Bench.Data;

/// <summary>All that one dossier's page shows, ready to print: a value, so that an equal one redraws nothing.</summary>
/// <param name="Name">Short name.</param>
/// <param name="Title">What it is about; may be empty.</param>
/// <param name="Entries">Number of entries of any kind.</param>
/// <param name="Notices">Sentences about what needs a look: refused files, unknown kinds, quarrels.</param>
/// <param name="Pictures">Files of the dossier, pictures first.</param>
/// <param name="Spots">Spots in natural order of their designators.</param>
/// <param name="Reckonings">Numbers by name.</param>
/// <param name="Claims">Claims in their order.</param>
public sealed record DossierPageModel(
    string Name,
    string Title,
    int Entries,
    ValueList<string> Notices,
    ValueList<PictureRow> Pictures,
    ValueList<SpotRow> Spots,
    ValueList<ReckoningRow> Reckonings,
    ValueList<ClaimRow> Claims);
