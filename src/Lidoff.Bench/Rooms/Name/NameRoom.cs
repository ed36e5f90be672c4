using Lidoff.Bench.Showing;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Rooms.Name;

/// <summary>Which part sits at each spot.</summary>
public sealed class NameRoom : IRoom
{
    /// <inheritdoc/>
    public string Name => "name";

    /// <inheritdoc/>
    public string Title => "Name";

    /// <inheritdoc/>
    public int Order => 3;

    /// <inheritdoc/>
    public string Tally(OpenDossier dossier) => Count.Of(SpotNames.Of(dossier.Session.View).Count, "spot");
}
