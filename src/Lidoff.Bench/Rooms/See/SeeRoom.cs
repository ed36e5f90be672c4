using Lidoff.Bench.Showing;
using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.See;

/// <summary>Pictures, scales, spots, lengths, marks.</summary>
public sealed class SeeRoom : IRoom
{
    /// <inheritdoc/>
    public string Name => "see";

    /// <inheritdoc/>
    public string Title => "See";

    /// <inheritdoc/>
    public int Order => 2;

    /// <inheritdoc/>
    public string Tally(OpenDossier dossier) => Count.Of(dossier.Session.View.Live<FileAdded>().Where(file => file.Value.Type.StartsWith("image/", StringComparison.Ordinal)).DistinctBy(file => file.Value.Sha256).Count(), "picture");
}
