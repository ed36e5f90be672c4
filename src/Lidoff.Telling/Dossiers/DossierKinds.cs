using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Registering;

namespace Lidoff.Telling.Dossiers;

/// <summary>Every evidence kind of every room, found by type: what any dossier is read by.</summary>
public static class DossierKinds
{
    /// <summary>The kinds.</summary>
    public static EvidenceKinds All { get; } = new(Registry.Of<IEvidenceKind>(kind => kind.Name,
    [
        typeof(IEvidenceKind).Assembly,
        typeof(Catalogue.PartCatalogue).Assembly,
        typeof(Opening.Kinds.SpecimenKind).Assembly,
        typeof(Seeing.Kinds.PictureKind).Assembly,
        typeof(Naming.Ranking.Ranker).Assembly,
        typeof(Tracing.Kinds.TouchKind).Assembly,
        typeof(Reckoning.Bound.ReckonKind).Assembly,
        typeof(Weighing.Modelling.DossierModel).Assembly,
        typeof(Kinds.ClaimKind).Assembly,
    ]).Items);
}
