using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;
using Lidoff.Weighing.Quarrels;

namespace Lidoff.Bench.Components.Layout;

/// <summary>What the drawer says of sightings that cannot all be true.</summary>
/// <param name="Quarrels">In the book's order.</param>
public sealed record QuarrelsView(ValueList<Quarrel> Quarrels)
{
    /// <summary>The quarrels as the dossier stands.</summary>
    public static QuarrelsView Of(OpenDossier dossier) => new([.. QuarrelBook.Find(dossier.Session.View, dossier.Model)]);
}
